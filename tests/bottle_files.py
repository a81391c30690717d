"""Small files of bottles as owners bring them, written down before their reader was read.

Each holds the file's bytes and what it should come to: the bottles that come in as they are, the
cells asked about (row as a spreadsheet counts it, and the column's header), the columns left aside,
and how many rows are no bottles (empty, a header again).
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Comes:
    """A bottle expected; what is None is not looked at, and `opened` is sealed, open or a date."""

    product: str
    ingredient: str
    abv: float | None = None
    size_ml: float | None = None
    level_ml: float | None = None
    price: float | None = None
    opened: str | None = None
    maker: str | None = None


@dataclass(frozen=True, slots=True)
class File:
    """One file, and what it should come to; `ready` is the likely answer by (row, column)."""

    name: str
    data: bytes
    comes: tuple[Comes, ...] = ()
    asked: tuple[tuple[int, str], ...] = ()
    ready: tuple[tuple[int, str, str], ...] = ()
    left_aside: tuple[str, ...] = ()
    refused: bool = False
    encoding: str = "UTF-8"


def _utf8(text: str) -> bytes:
    return text.encode("utf-8")


HEAD = "product,maker,ingredient,abv,size,level,price,opened\n"
GIN = "Signal Dry,Pellow & Rudge,London dry gin,43,700,full,24.50,no\n"
GIN_COMES = Comes("Signal Dry", "London dry gin", 43, 700, 700, 24.5, "sealed", "Pellow & Rudge")
RYE = "Branch Rye,Copperbend,Rye whiskey,50,700,350 ml,38,2026-03-14\n"
RYE_COMES = Comes("Branch Rye", "Rye whiskey", 50, 700, 350, 38, "2026-03-14", "Copperbend")

FILES = (
    File("plain", _utf8(HEAD + GIN + RYE), (GIN_COMES, RYE_COMES)),
    File(
        "semicolons and decimal commas",
        _utf8(
            "product;maker;ingredient;abv;size;level;price;opened\n"
            "Signal Dry;Pellow & Rudge;London dry gin;43,5;0,7 l;0,5;24,50;yes\n"
        ),
        (Comes("Signal Dry", "London dry gin", 43.5, 700, 350, 24.5, "open"),),
    ),
    File(
        "tabs",
        _utf8((HEAD + GIN).replace(",", "\t")),
        (GIN_COMES,),
    ),
    File(
        "UTF-16 with tabs, as a spreadsheet saves it",
        (HEAD + GIN).replace(",", "\t").encode("utf-16"),
        (GIN_COMES,),
        encoding="UTF-16",
    ),
    File(
        "Windows-1252",
        "product;ingredient;abv;size;price\nNuit d’été;Blanco tequila;40;70cl;€ 31,00\n".encode(
            "cp1252"
        ),
        (),
        asked=((2, "price"),),
        ready=((2, "price", ""),),
        encoding="Windows-1252",
    ),
    File("byte order mark", b"\xef\xbb\xbf" + _utf8(HEAD + GIN), (GIN_COMES,)),
    File(
        "German headers",
        _utf8(
            "Name;Hersteller;Zutat;Alkohol;Größe;Füllstand;Preis;Geöffnet\n"
            "Signal Dry;Pellow & Rudge;London dry gin;43 %;0,7 l;voll;24,50;nein\n"
        ),
        (GIN_COMES,),
    ),
    File(
        "French headers",
        _utf8(
            "Produit;Fabricant;Ingrédient;Degré;Contenance;Niveau;Prix;Ouverte\n"
            "Signal Dry;Pellow & Rudge;London dry gin;43 %;70 cl;pleine;24,50;non\n"
        ),
        (GIN_COMES,),
    ),
    File(
        "Italian headers",
        _utf8(
            "Prodotto;Produttore;Ingrediente;Gradazione;Formato;Livello;Prezzo;Aperta\n"
            "Signal Dry;Pellow & Rudge;London dry gin;43%;70 cl;piena;24,50;no\n"
        ),
        (GIN_COMES,),
    ),
    File(
        "Spanish headers",
        _utf8(
            "Producto;Fabricante;Ingrediente;Graduación;Tamaño;Nivel;Precio;Abierta\n"
            "Signal Dry;Pellow & Rudge;London dry gin;43%;70 cl;llena;24,50;no\n"
        ),
        (GIN_COMES,),
    ),
    File(
        "levels in words and measures",
        _utf8(
            "product,ingredient,size,level\n"
            "A,Gin,700,full\nB,Gin,700,half\nC,Gin,700,3/4\nD,Gin,700,60%\nE,Gin,700,0.6\n"
            "F,Gin,700,315 ml\nG,Gin,700,10 oz\nH,Gin,700,empty\nI,Gin,700,half full\nJ,Gin,700,\n"
        ),
        (
            Comes("A", "Gin", None, 700, 700),
            Comes("B", "Gin", None, 700, 350),
            Comes("C", "Gin", None, 700, 525),
            Comes("D", "Gin", None, 700, 420),
            Comes("E", "Gin", None, 700, 420),
            Comes("F", "Gin", None, 700, 315),
            Comes("G", "Gin", None, 700, 295.735),
            Comes("H", "Gin", None, 700, 0),
            Comes("I", "Gin", None, 700, 350),
            Comes("J", "Gin", None, 700, 700),
        ),
    ),
    File(
        "strengths as written",
        _utf8(
            "product,ingredient,abv,size\nA,Gin,43,700\nB,Gin,43 %,700\nC,Gin,86 proof,700\n"
            "D,Gin,0.43,700\n"
            "E,Gin,43% vol,700\nF,Orange bitters,0.5%,100\nG,Gin,,700\n"
        ),
        (
            Comes("A", "Gin", 43),
            Comes("B", "Gin", 43),
            Comes("C", "Gin", 43),
            Comes("E", "Gin", 43),
            Comes("F", "Orange bitters", 0.5),
            Comes("G", "Gin"),
        ),
        asked=((5, "abv"),),
        ready=((5, "abv", "43 %"),),
    ),
    File(
        "a column of shares",
        _utf8("product,ingredient,abv,size\nA,Gin,0.43,700\nB,Vodka,0.4,700\n"),
        asked=((2, "abv"), (3, "abv")),
        ready=((2, "abv", "43 %"), (3, "abv", "40 %")),
    ),
    File(
        "prices with their sign",
        _utf8(
            "product,ingredient,size,price\nA,Gin,700,£24.50\nB,Gin,700,24.50 £\n"
            "C,Gin,700,GBP 24.50\n"
            'D,Gin,700,"£1,024.50"\nE,Gin,700,$30\n'
        ),
        (
            Comes("A", "Gin", price=24.5),
            Comes("B", "Gin", price=24.5),
            Comes("C", "Gin", price=24.5),
        ),
        asked=((5, "price"), (6, "price")),
        ready=((5, "price", "1024.50"), (6, "price", "")),
    ),
    File(
        "sizes as written",
        _utf8(
            "product,ingredient,size\nA,Gin,70cl\nB,Gin,0.7 l\nC,Gin,700\nD,Gin,24 oz\n"
            "E,Gin,1 litre\n"
            "F,Gin,750ml\nG,Gin,1.75L\nH,Gin,0.7\nI,Gin,70\n"
        ),
        (
            Comes("A", "Gin", None, 700),
            Comes("B", "Gin", None, 700),
            Comes("C", "Gin", None, 700),
            Comes("D", "Gin", None, 709.765),
            Comes("E", "Gin", None, 1000),
            Comes("F", "Gin", None, 750),
            Comes("G", "Gin", None, 1750),
        ),
        asked=((9, "size"), (10, "size")),
        ready=((9, "size", "700 ml"), (10, "size", "700 ml")),
    ),
    File(
        "opened, yes or no",
        _utf8(
            "product,ingredient,size,opened\nA,Gin,700,yes\nB,Gin,700,no\nC,Gin,700,x\nD,Gin,700,\n"
            "E,Gin,700,perhaps\n"
        ),
        (
            Comes("A", "Gin", opened="open"),
            Comes("B", "Gin", opened="sealed"),
            Comes("C", "Gin", opened="open"),
            Comes("D", "Gin", opened="sealed"),
        ),
        asked=((6, "opened"),),
    ),
    File(
        "opened, dates in usual forms",
        _utf8(
            "product,ingredient,size,opened\nA,Gin,700,2026-03-14\nB,Gin,700,14 March 2026\n"
            'C,Gin,700,14/03/2026\nD,Gin,700,14.03.2026\nE,Gin,700,"March 14, 2026"\n'
            "F,Gin,700,14 Mar 2026\nG,Gin,700,2026/03/14\n"
        ),
        tuple(Comes(letter, "Gin", opened="2026-03-14") for letter in "ABCDEFG"),
    ),
    File(
        "a date that may be two",
        _utf8("product,ingredient,size,opened\nA,Gin,700,03/04/2026\nB,Gin,700,04/04/2026\n"),
        (Comes("B", "Gin", opened="2026-04-04"),),
        asked=((2, "opened"),),
    ),
    File(
        "a date to come",
        _utf8("product,ingredient,size,opened\nA,Gin,700,2031-05-01\nB,Gin,700,2026-01-01\n"),
        (Comes("B", "Gin", opened="2026-01-01"),),
        asked=((2, "opened"),),
    ),
    File(
        "a day that is none",
        _utf8("product,ingredient,size,opened\nA,Gin,700,31/02/2026\n"),
        asked=((2, "opened"),),
    ),
    File(
        "a line break inside quotes",
        _utf8('product,ingredient,abv,size\n"Night\nSleeper",Gin,40,700\nB,Gin,1000,700\n'),
        (Comes("Night Sleeper", "Gin", 40),),
        asked=((3, "abv"),),
    ),
    File(
        "empty rows and columns at the end",
        _utf8("product,ingredient,abv,size,,\nA,Gin,40,700,,\n,,,,,\n\n,,,,,\n"),
        (Comes("A", "Gin", 40),),
    ),
    File(
        "the header once more",
        _utf8(
            "product,ingredient,abv,size\nA,Gin,40,700\nproduct,ingredient,abv,size\n"
            "B,Vodka,38,700\n"
        ),
        (Comes("A", "Gin", 40), Comes("B", "Vodka", 38)),
    ),
    File(
        "a maker with a number in words",
        _utf8("product,maker,ingredient,abv,size\nThird Rail,Seven Sisters,Vodka,40,700\n"),
        (Comes("Third Rail", "Vodka", 40, maker="Seven Sisters"),),
    ),
    File(
        "an ingredient nobody knows",
        _utf8(
            "product,ingredient,abv,size\nA,Londn dry gin,40,700\nB,Florble,20,700\nC,Gin,40,700\n"
        ),
        (Comes("C", "Gin", 40),),
        asked=((2, "ingredient"), (3, "ingredient")),
        ready=((2, "ingredient", "London dry gin"), (3, "ingredient", "")),
    ),
    File(
        "a column that means nothing here",
        _utf8("product,ingredient,shelf,abv,size,notes to self\nA,Gin,top,40,700,nice\n"),
        (Comes("A", "Gin", 40),),
        left_aside=("shelf", "notes to self"),
    ),
    File(
        "one bad row among good ones",
        _utf8(HEAD + GIN + "Bad,Marrow Hill,Vodka,143,700,full,20,no\n" + RYE),
        (GIN_COMES, RYE_COMES),
        asked=((3, "abv"),),
    ),
    File(
        "the same bottle twice in one file",
        _utf8("product,ingredient,abv,size\nA,Gin,40,700\nA,Gin,40,700\n"),
        (Comes("A", "Gin", 40, 700), Comes("A", "Gin", 40, 700)),
    ),
    File(
        "a decimal comma nobody quoted",
        _utf8("product,ingredient,size,price\nA,Gin,700,24,50\nB,Gin,700,20\n"),
        (Comes("B", "Gin", price=20),),
        asked=((2, ""),),
    ),
    File(
        "rows shorter than the header",
        _utf8(HEAD + "A,,Gin\nB,,Vodka,40,700\n"),
        (Comes("B", "Vodka", 40, 700),),
        asked=((2, "size"),),
        ready=((2, "size", "700 ml"),),
    ),
    File("no header", _utf8("Signal Dry,Pellow & Rudge,London dry gin,43,700\n"), refused=True),
    File(
        "no column of ingredients",
        _utf8("product,abv,size\nSignal London Dry Gin,43,700\nFlorble,20,700\n"),
        asked=((2, "ingredient"), (3, "ingredient")),
        ready=((2, "ingredient", "London dry gin"),),
    ),
    File("an empty file", b"", refused=True),
    File("a header and nothing under it", _utf8(HEAD), refused=True),
    File(
        "figures out of all bounds",
        _utf8(
            "product,ingredient,abv,size,level,price\nA,Gin,40,700,900 ml,20\n"
            "B,Gin,40,700,120%,20\n"
            "C,Gin,40,700,full,-3\nD,Gin,-4,700,full,3\nE,Gin,40,-700,full,3\nF,Gin,40,700,full,\n"
        ),
        (Comes("F", "Gin", 40, 700, 700),),
        asked=((2, "level"), (3, "level"), (4, "price"), (5, "abv"), (6, "size")),
    ),
    File(
        "quotes within quotes, and lines ended both ways",
        _utf8('product,ingredient,abv,size\r\n"The ""Hollow"" Lamp",Gin,40,700\r\n'),
        (Comes('The "Hollow" Lamp', "Gin", 40),),
    ),
    File(
        "no-break spaces",
        _utf8(
            "product,ingredient,abv,size\n"
            "Grey\u00a0Ferry,London\u00a0dry gin,43\u202f%,70\u00a0cl\n"
        ),
        (Comes("Grey Ferry", "London dry gin", 43, 700),),
    ),
    File(
        "the separator said first",
        _utf8("sep=;\nproduct;ingredient;abv;size\nA;Gin;40,5;700\n"),
        (Comes("A", "Gin", 40.5),),
    ),
    File(
        "units in the headers",
        _utf8(
            "Product name,Ingredient,ABV (%),Size (cl),Level (ml),Price (£)\nA,Gin,43,70,350,24.5\n"
        ),
        (Comes("A", "Gin", 43, 700, 350, 24.5),),
    ),
    File(
        "one header twice",
        _utf8("product,ingredient,size,price,price\nA,Gin,700,20,25\nB,Gin,700,20,20\n"),
        (Comes("B", "Gin", price=20),),
        asked=((2, "price"),),
    ),
    File(
        "half gone and never opened",
        _utf8("product,ingredient,size,level,opened\nA,Gin,700,half,no\n"),
        asked=((2, "opened"),),
    ),
    File(
        "a bare level that may be two things",
        _utf8("product,ingredient,size,level\nA,Gin,700,60\nB,Gin,700,350\nC,Gin,700,1\n"),
        (Comes("B", "Gin", None, 700, 350), Comes("C", "Gin", None, 700, 700)),
        asked=((2, "level"),),
        ready=((2, "level", "60 %"),),
    ),
    File("a picture", b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR\x00\x00\x00\x10", refused=True),
    File(
        "dashes where nothing is known",
        _utf8("product,maker,ingredient,abv,size,price\nA,-,Gin,n/a,700,–\nB,,Gin,?,700,20\n"),
        (Comes("A", "Gin"),),
        asked=((3, "abv"),),
    ),
    File(
        "no name but a kind",
        _utf8("product,maker,ingredient,abv,size\n,Tansy Lock,Gin,40,700\n"),
        asked=((2, "product"),),
    ),
)
