"""What is shown becomes what is to be shown, and what does not differ is left alone."""

BECOMES = """async ([before, after]) => {
  const { patch } = await part("answer/patch.js");
  const made = (html) => new DOMParser().parseFromString(`<div>${html}</div>`, "text/html").body.firstChild;
  const shown = made(before);
  const kept = new Set(shown.querySelectorAll("*"));
  const wanted = made(after);
  const target = wanted.innerHTML;
  patch(shown, wanted.childNodes);
  const still = [...shown.querySelectorAll("*")].filter((one) => kept.has(one));
  return { right: shown.innerHTML === target, kept: still.length };
}"""
LINE = ('<span class="label">Resin</span><span class="text">187<i> g</i></span>'
        '<svg viewBox="0 0 9 9"><rect x="1"></rect></svg>')


def becomes(phone, before, after):
    return phone.evaluate(BECOMES, [before, after])


def test_another_figure_moves_what_is_there(phone, standing):
    phone.goto(standing.url)
    after = LINE.replace("187", "240").replace('x="1"', 'x="7"').replace(' class="label"', "")
    assert becomes(phone, LINE, after) == {"right": True, "kept": 5}


def test_white_space_comments_and_other_kinds_of_lines_are_replaced(phone, standing):
    phone.goto(standing.url)
    spaced = LINE.replace("><", ">\n <").replace("Resin", "<!-- of the label -->Resin")
    for before, after in ((spaced, LINE), (LINE, spaced), (LINE, "<p>Too small</p>"), ("", LINE), (LINE, "")):
        assert becomes(phone, before, after)["right"]
