"""The price of a job: what is bought, the work by the minute, what is charged beside, and what stays with the maker.

    from plumpline.price import quote

One file for each thing that makes lines; `quoting` puts them together.
"""

from plumpline.price.quoting import priced, quote

__all__ = ["priced", "quote"]
