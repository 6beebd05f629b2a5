"""The server: API, pages, static export and command line. No formula lives here."""
