"""The site in one language: its build, its pages, and what is made of them once."""
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from threading import Lock

from .build import Build, File
from .pages import Pages


class Site:
    """All that is sent in one language. What takes seconds is made by one thread, once somebody asks for it."""

    def __init__(self, build: Build, maker: ThreadPoolExecutor):
        self.build, self.maker = build, maker
        self.pages = Pages(build)
        self.lock = Lock()
        self.made: tuple[Future[File], Future[File]] | None = None

    def begin(self) -> "tuple[Future[File], Future[File]]":
        """Make pages, bundle and service worker, and anew where that failed; pages are served meanwhile, as they are
        made for each request."""
        with self.lock:
            if not self.made or any(one.done() and one.exception() for one in self.made):
                self.made = self._make()
            return self.made

    def bundle(self) -> File:
        """The engine, the pages and the scripts of later, once they are made."""
        return self.begin()[0].result()

    def worker(self) -> File:
        """The service worker, once all that it keeps is made."""
        return self.begin()[1].result()

    def told(self, listener: Callable[["Future[File]"], None]) -> None:
        """Call the listener once the service worker is made, which is the last of them."""
        self.begin()[1].add_done_callback(listener)

    def _make(self) -> "tuple[Future[File], Future[File]]":
        self.maker.submit(self.pages.prepare)
        bundle = self.maker.submit(lambda: self.build.bundle(self.pages.kept()))
        return bundle, self.maker.submit(lambda: self.build.worker_file(bundle.result()))
