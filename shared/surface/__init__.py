"""The surface: what is no seam: coats, cloth, glue lines, fairing, and fillets without tape.

May import: seam and the rooms below.
"""
