"""The version: said here once; the package, the command, the API and the changelog follow."""
VERSION = "0.2.0"
