"""Tipping points: in which interval of the width, the size or the repeat the length to buy stays what it is."""

from plumpline.tipping.fields import tips as tips
