"""Speech: numbers as the words that are said over a bench, where "240" and "214" are easily mistaken.

In English; another language hands digits to the voice (`Language.spelt`).
"""

SMALL = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
         "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen")
TENS = ("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")


def whole_words(number: int) -> str:
    """A whole number below a million in words, as British English says it.

    >>> whole_words(243), whole_words(1005), whole_words(12000)
    ('two hundred and forty-three', 'one thousand and five', 'twelve thousand')
    """
    if number < 20:
        return SMALL[number]
    if number < 100:
        tens = TENS[number // 10]
        return tens + "-" + SMALL[number % 10] if number % 10 else tens
    if number < 1000:
        found = SMALL[number // 100] + " hundred"
        return found + " and " + whole_words(number % 100) if number % 100 else found
    found, rest = whole_words(number // 1000) + " thousand", number % 1000
    if not rest:
        return found
    return found + (" and " if rest < 100 else " ") + whole_words(rest)


def number_words(digits: str) -> str:
    """Digits in words, decimals one by one; what is no number below a million stays as it is.

    >>> number_words("63.1"), number_words("0.05"), number_words("-2")
    ('sixty-three point one', 'zero point zero five', 'minus two')
    """
    if digits.startswith("-"):
        return "minus " + number_words(digits[1:])
    whole, _, decimals = digits.partition(".")
    if not whole or len(whole) > 6 or any([c not in "0123456789" for c in whole + decimals]):
        return digits
    found = whole_words(int(whole))
    if decimals:
        found += " point " + " ".join([SMALL[int(c)] for c in decimals])
    return found
