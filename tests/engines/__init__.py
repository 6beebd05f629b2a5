"""The main way in engines beside Chromium: Firefox, WebKit, and a WebKit as old as the oldest phone we answer for."""
