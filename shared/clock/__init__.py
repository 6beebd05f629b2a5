"""The clock: how long a batch can be used, how hot it gets, running pots, cure windows and dew.

May import: mix and the rooms below.
"""
