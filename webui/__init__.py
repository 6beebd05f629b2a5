"""What the browser gets: templates, styles, ES modules, service worker, icons and vendored libraries."""
