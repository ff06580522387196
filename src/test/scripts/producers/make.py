#!/usr/bin/python3
"""Draws one sheet's lines with as many programs and libraries as there are.

    make.py LINES.pdf FOLDER [--every N]

Every N-th stroke of the sheet (each, if not said) is drawn, in files that differ in all that exports differ in: units, nesting,
forms, clips, groups, packing, colour spaces, turned pages, covers, encryption without a password, and mishaps. FOLDER/expected.tsv says
what each should hold: file, how many mm in a metre it may be off, whether a pass should be placed by it, and the mm in each colour.
A program that is not installed costs its files and no others; what failed is printed.

Debian: python3-cairo python3-reportlab python3-matplotlib python3-pyqt5 python3-pyqt5.qtsvg ghostscript mupdf-tools poppler-utils
qpdf r-base-core texlive-pictures texlive-latex-base texlive-luatex gnuplot-nox chromium libreoffice-draw-nogui inkscape librsvg2-bin nodejs.
npm: pdf-lib jspdf pdfkit, found by NODE_PATH.
"""
import argparse

import libraries
import programs
import raw
import rewritten
from scene import Book, Scene

MAKERS = (libraries.with_cairo, libraries.with_reportlab, libraries.with_matplotlib, libraries.with_qt,
          programs.with_r, programs.with_tikz, programs.with_gnuplot, programs.with_browser, programs.with_office,
          programs.with_inkscape, programs.with_librsvg, programs.with_node,
          rewritten.with_ghostscript, rewritten.with_mupdf, rewritten.with_poppler, rewritten.with_qpdf,
          rewritten.with_mishaps, raw.by_hand)


def main():
    told = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    told.add_argument("lines")
    told.add_argument("folder")
    told.add_argument("--every", type=int, default=1)
    told.add_argument("--only", help="makers whose name holds this")
    options = told.parse_args()
    book = Book(options.folder, Scene(options.lines, options.every))
    for maker in MAKERS:
        if options.only is None or options.only in maker.__name__:
            book.attempt(maker.__name__, lambda maker=maker: maker(book))
    book.write()
    print(f"{len(book.rows)} files")
    for failure in book.failed:
        print("failed:", failure)


main()
