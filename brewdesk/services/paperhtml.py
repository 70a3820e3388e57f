"""A document as one HTML file: no script, nothing fetched, every text escaped."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape

from brewdesk.services.paperdoc import (
    COLOURS,
    Block,
    Document,
    Dot,
    Drawing,
    Facts,
    Grid,
    Halves,
    Heading,
    Label,
    Para,
    Stroke,
)

# Told to the browser as well: whatever stood in here, it may load and run nothing.
_POLICY = "default-src 'none'; style-src 'unsafe-inline'"
_MUTED = ' class="muted"'
_NUMBER = ' class="n"'
_STYLE = f"""
*{{box-sizing:border-box}}
body{{font:15px/1.45 system-ui,sans-serif;color:{COLOURS["ink"]};background:#fff;
margin:0 auto;padding:2rem 1.5rem;max-width:56rem}}
h1{{font-size:1.7rem;line-height:1.2;margin:.1rem 0}}h2{{font-size:1.1rem;margin:1.4rem 0 .4rem}}
.kind,.muted,footer,figcaption{{color:{COLOURS["muted"]}}}p{{margin:.3rem 0}}
dl{{display:flex;flex-wrap:wrap;gap:.5rem 2rem;margin:.8rem 0}}dt{{font-size:.85rem;
color:{COLOURS["muted"]}}}dd{{margin:0;font-weight:600}}
table{{border-collapse:collapse;width:100%;font-size:.92rem}}th{{text-align:left;
font-size:.82rem;color:{COLOURS["muted"]}}}th,td{{padding:.25rem .6rem .25rem 0;
vertical-align:top;border-bottom:1px solid {COLOURS["shade"]};overflow-wrap:anywhere}}
.n{{text-align:right;font-variant-numeric:tabular-nums}}
h1,h2,p,dd,td,figcaption{{unicode-bidi:plaintext;white-space:pre-line}}
figure{{margin:1rem 0}}svg{{width:100%;height:auto;display:block}}
.halves{{display:grid;grid-template-columns:repeat(auto-fit,minmax(20rem,1fr));gap:0 2rem}}
footer{{margin-top:1.5rem;border-top:1px solid {COLOURS["line"]};padding-top:.5rem;
font-size:.85rem}}
@media print{{body{{padding:0;font-size:10pt}}tr,figure{{break-inside:avoid}}}}
""".replace("\n", "")


def html_of(document: Document) -> str:
    """Return the whole file."""
    return "\n".join(
        [
            "<!DOCTYPE html>",
            f'<html lang="{_text(document.language)}">',
            '<head><meta charset="utf-8">',
            f'<meta http-equiv="Content-Security-Policy" content="{_POLICY}">',
            '<meta name="viewport" content="width=device-width">',
            f"<title>{_text(document.title)} – {_text(document.kind)}</title>",
            f"<style>{_STYLE}</style></head>",
            "<body><header>",
            f'<p class="kind">{_text(document.kind)} · {_text(document.made_on)}</p>',
            f"<h1>{_text(document.title)}</h1>",
            f"<p>{_text(document.subtitle)}</p></header><main>",
            *map(_block, document.blocks),
            f"</main><footer><p>{_text(document.footer)}</p></footer>",
            "</body></html>",
            "",
        ]
    )


def _text(words: str) -> str:
    """Escape words; what is no character of HTML becomes a mark that can be seen."""
    return escape("".join(sign if _may_stand(ord(sign)) else "\ufffd" for sign in words))


def _may_stand(number: int) -> bool:
    # https://html.spec.whatwg.org/multipage/syntax.html#text-2: no surrogates, noncharacters
    # or controls other than white space.
    if number < 0x20 or 0x7F <= number <= 0x9F:
        return number in (0x09, 0x0A, 0x0D)
    return not (
        0xD800 <= number <= 0xDFFF or 0xFDD0 <= number <= 0xFDEF or number & 0xFFFE == 0xFFFE
    )


def _block(block: Block) -> str:
    if isinstance(block, Heading):
        return f"<h2>{_text(block.text)}</h2>"
    if isinstance(block, Para):
        return f"<p{_MUTED if block.is_muted else ''}>{_text(block.text)}</p>"
    if isinstance(block, Facts):
        pairs = (f"<div><dt>{_text(a)}</dt><dd>{_text(b)}</dd></div>" for a, b in block.pairs)
        return f"<dl>{''.join(pairs)}</dl>"
    if isinstance(block, Grid):
        return _grid(block)
    if isinstance(block, Halves):
        sides = ("".join(map(_block, side)) for side in (block.left, block.right))
        return f'<div class="halves">{"".join(f"<div>{side}</div>" for side in sides)}</div>'
    return _drawing(block)


def _grid(grid: Grid) -> str:
    def row(cells: Iterable[str], tag: str) -> str:
        said = (
            f"<{tag}{_NUMBER if n in grid.numbers else ''}>{_text(cell)}</{tag}>"
            for n, cell in enumerate(cells)
        )
        return f"<tr>{''.join(said)}</tr>"

    body = "".join(row(cells, "td") for cells in grid.rows)
    head = row(grid.headers, "th")
    return f"<table><thead>{head}</thead><tbody>{body}</tbody></table>"


def _drawing(drawing: Drawing) -> str:
    shapes = "".join(map(_shape, drawing.shapes))
    return (
        f'<figure><svg xmlns="http://www.w3.org/2000/svg" role="img" '
        f'viewBox="0 0 {drawing.width:g} {drawing.height:g}">'
        f"<title>{_text(drawing.words)}</title>{shapes}</svg>"
        f"<figcaption>{_text(drawing.words)}</figcaption></figure>"
    )


def _shape(shape: Stroke | Dot | Label) -> str:
    colour = COLOURS[shape.ink]
    if isinstance(shape, Label):
        return (
            f'<text x="{shape.x:.2f}" y="{shape.y:.2f}" text-anchor="{shape.anchor}" '
            f'font-size="{shape.size:g}" fill="{colour}">{_text(shape.text)}</text>'
        )
    if isinstance(shape, Dot):
        fill = "#fff" if shape.is_hollow else colour
        return (
            f'<circle cx="{shape.x:.2f}" cy="{shape.y:.2f}" r="{shape.radius:g}" '
            f'fill="{fill}" stroke="{colour}" stroke-width="0.8"/>'
        )
    points = " ".join(f"{x:.2f},{y:.2f}" for x, y in shape.points)
    if shape.is_filled:
        return f'<polygon points="{points}" fill="{colour}"/>'
    dashes = ' stroke-dasharray="4 3"' if shape.is_dashed else ""
    return (
        f'<polyline points="{points}" fill="none" stroke="{colour}" '
        f'stroke-width="{shape.width:g}"{dashes}/>'
    )
