"""Published sources by key: title, edition and place, as a reader would look them up."""

SOURCES = {
    "sp811": "NIST SP 811 (2008), Guide for the Use of the SI, Appendix B.8",
    "gum": "JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement",
    "iso80000-4": "ISO 80000-4, Quantities and units, Mechanics: density",
    "ghs": "UN Globally Harmonized System of Classification and Labelling of Chemicals, Annex 3",
    "iso374": "EN ISO 374-1, Protective gloves against dangerous chemicals",
    "en149": "EN 149, Filtering half masks to protect against particles",
    "42cfr84": "42 CFR 84, Approval of respiratory protective devices",
}
