"""Amounts behind a hedge or a lead-in, written down before the reader was tried on any of them.

In the form of `tests.domain.spec_text.lines_as_written`; all invented. After a `#` stands
what the note holds. `asks X`: the reader must ask, and its question names X.
"""

from __future__ import annotations

HEDGED = """
~2 oz gin | 2 oz gin # about
~ 2 oz gin | 2 oz gin # about
≈ 60 ml gin | 60 ml gin # about
ca. 60 ml gin | 60 ml gin # ca.
ca 60 ml gin | 60 ml gin # ca
c. 2 oz bourbon | 2 oz bourbon # c.
circa 20 ml lime juice | 20 ml lime-juice # circa
approx. 1 oz lime juice | 1 oz lime-juice # approx.
approx 1 oz lime juice | 1 oz lime-juice # approx
approximately 3/4 oz lemon juice | 0.75 oz lemon-juice # approximately
about 2 oz gin | 2 oz gin # about
About an ounce of gin | 1 oz gin # About
about half an ounce of simple syrup | 0.5 oz simple-syrup # about
roughly 45 ml pisco | 45 ml pisco # roughly
around 100 ml soda water | 100 ml soda-water # around
nearly 2 oz rye | 2 oz rye-whiskey # nearly
just under 1 oz lime juice | 1 oz lime-juice # just under
a bit over 1 oz lime juice | 1 oz lime-juice # a bit over
up to 1 oz simple syrup | 1 oz simple-syrup # up to
maybe 2 dashes orange bitters | 2 dash orange-bitters # maybe
about 6 mint leaves | 6 each mint-leaf # about
~6-8 mint leaves | 6-8 each mint-leaf # about
gin, about 2 oz | 2 oz gin # about
gin ~60 ml | 60 ml gin # about
gin: approx. 60 ml | 60 ml gin # approx.
lime juice (about 20 ml) | 20 ml lime-juice # about
about 2 oz each gin and sweet vermouth | 2 oz gin ; 2 oz sweet-vermouth # about
"""
"""What says that an amount is not exact is noted."""


LED_IN = """
and 2 oz gin | 2 oz gin
+ 2 oz gin | 2 oz gin
+2 oz gin | 2 oz gin
& 1 oz sweet vermouth | 1 oz sweet-vermouth
plus 1 oz lime juice | 1 oz lime-juice
Plus 1 dash orange bitters | 1 dash orange-bitters
then 2 oz gin | 2 oz gin
then add 2 oz gin | 2 oz gin
add 2 oz gin | 2 oz gin
And a dash of orange bitters | 1 dash orange-bitters
finally, a dash of orange bitters | 1 dash orange-bitters
and about 2 oz gin | 2 oz gin # about
plus (optional) 2 dashes orange bitters | 2 dash orange-bitters optional
(optional) 2 dashes saline solution | 2 dash saline-solution optional
[optional] 1 dash absinthe | 1 dash absinthe optional
(optional) ~5 ml absinthe | 5 ml absinthe optional # about
(optionally) 1 egg white | 1 each egg-white optional
optional 0.5 oz orgeat | 0.5 oz orgeat optional
- [ ] 2 oz gin | 2 oz gin
- [x] 1 oz lime juice | 1 oz lime-juice
* [ ] 3/4 oz simple syrup | 0.75 oz simple-syrup
[ ] 2 oz gin | 2 oz gin
☐ 2 oz gin | 2 oz gin
- and 2 oz gin | 2 oz gin
-- 2 oz gin | 2 oz gin
> 2 oz gin | 2 oz gin
→ 2 oz gin | 2 oz gin
and top with soda water | - - soda-water # to top
and juice of half a lime | 0.5 each lime # juice
"""
"""What only joins a line to the one before, or stands in a list, means nothing."""


STRANGE = """
Harbour 2 oz gin | asks 2 oz
splendid 2 ounces gin | asks 2 ounces
Grey Ferry 60 ml London dry gin | asks 60 ml
2 oz Old 47 gin | asks 47
2 oz Number Nine 3 oz gin | asks 3 oz
2 oz lime juice gin | asks lime juice
2 oz gin 1 oz lime juice | 2 oz gin ; 1 oz lime-juice
2 oz gin, 1 oz lime juice | 2 oz gin ; 1 oz lime-juice
2 oz gin (with 1 oz lime juice) | asks 1 oz
2 oz gin + 1 oz lime juice | 2 oz gin ; 1 oz lime-juice
2 oz gin and 1 oz lime juice | 2 oz gin ; 1 oz lime-juice
2 oz gin then 1 oz lime juice | 2 oz gin ; 1 oz lime-juice
2 oz gin, stirred with campari and 10 ml honey | asks campari
1 oz vodka gin | asks vodka
bourbon 2 oz rye | asks bourbon
splash of 2 oz gin | asks 2 oz
a 2 oz gin | asks a
some of the 2 oz gin | asks 2 oz
2 oz of a gin | 2 oz gin
2 oz oz gin | asks oz
2 3 oz gin | asks 3
2 oz 3 gin | asks 3
60 ml 2 oz gin | asks 2 oz
x 2 oz gin | asks 2 oz
2 x 30 ml gin | 60 ml gin # 2 x 30 ml
not 2 oz gin | asks 2 oz
#2 oz gin | asks 2 oz
=2 oz gin | asks 2 oz
30 ml Smoke of Kelp gin | asks of
2 oz gin, a drop of honey | 2 oz gin ; 1 drop honey
2 oz gin, infused with 5 g tea | asks 5 g
dash 2 dashes orange bitters | asks dash
"""
"""What cannot be placed is asked about. A maker's words hold no number, unit, article or *of*."""
