"""A kind of input that is made up: it stands in no form of ours, and has to work in each."""
from covemix.shared.forms.declared import Input, missing

DRAWN = """<label><input type="checkbox" name="{{ path }}" value="on"
  {%- if (page.typed.get(path) or item.default) == "on" %} checked{% endif %}> {{ item.label }}</label>"""


class Switch(Input):
    """On or off. Reads into True or False."""

    kind = control = "switch"
    says_default = True

    def default_in(self, system):
        return "off"

    def read(self, typed, path, values):
        if missing(typed) or typed in ("off", False):
            return False
        if typed in ("on", True):
            return True
        self.refuse(path, "on or off")

    def knows(self, name, text):
        return text in ("", "on", "off")

    def in_words(self, text, tree, system, tools):
        return {"on": "yes", "off": "no"}[text]

    def about(self, system):
        return dict(Input.about(self, system), default="off")
