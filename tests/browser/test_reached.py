"""What a test reaches of a script is told page by page, for `make mutants`."""
from reached import listen


def test_each_block_is_told_again_by_the_next_page_and_after_a_while(chromium):
    context, told = chromium.new_context(), []
    listen(context, told.append)
    page = context.new_page()
    page.evaluate("for (const number of [3, 4, 3]) reached(number)")
    assert told == [[3, 4]]
    page.evaluate("reached(3)")
    assert told == [[3, 4]]
    page.wait_for_timeout(250)
    page.evaluate("reached(3)")
    assert told == [[3, 4], [3]]
    page.reload()
    page.evaluate("reached(4)")
    assert told == [[3, 4], [3], [4]]
    context.close()
