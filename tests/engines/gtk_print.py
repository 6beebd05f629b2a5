"""Prints a page to a PDF on A4 as WebKitGTK's own dialog does, which its WebDriver cannot. For Debian's Python with
GObject: `python3 gtk_print.py URL PDF MARGIN_MM`
"""
import sys
from pathlib import Path

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import GLib, Gtk, WebKit2  # noqa: E402

LIVE = "document.querySelector('[data-form]').classList.contains('live') && !!document.querySelector('.shape-template')"
OFTEN = 100  # ms


def main(url: str, path: str, margin: float) -> None:
    view, window = WebKit2.WebView(), Gtk.Window()
    window.add(view)
    window.show_all()
    held = []  # what runs must not be thrown away

    def look() -> bool:
        view.run_javascript(LIVE, None, looked)
        return False

    def looked(_: object, result: object) -> None:
        if view.run_javascript_finish(result).get_js_value().to_boolean():
            printed()
        else:
            GLib.timeout_add(OFTEN, look)

    def printed() -> None:
        settings, setup = Gtk.PrintSettings(), Gtk.PageSetup()
        settings.set_printer("Print to File")
        settings.set(Gtk.PRINT_SETTINGS_OUTPUT_FILE_FORMAT, "pdf")
        settings.set(Gtk.PRINT_SETTINGS_OUTPUT_URI, Path(path).as_uri())
        setup.set_paper_size(Gtk.PaperSize.new("iso_a4"))
        for side in (setup.set_top_margin, setup.set_bottom_margin, setup.set_left_margin, setup.set_right_margin):
            side(margin, Gtk.Unit.MM)
        operation = WebKit2.PrintOperation.new(view)
        operation.set_print_settings(settings)
        operation.set_page_setup(setup)
        operation.connect("finished", lambda _: Gtk.main_quit())
        held.append(operation)
        operation.print_()

    view.connect("load-changed", lambda _, event: look() if event == WebKit2.LoadEvent.FINISHED else None)
    view.load_uri(url)
    Gtk.main()


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], float(sys.argv[3]))
