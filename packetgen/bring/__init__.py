"""Bringing a design in: a picture, a table or a grid of signs becomes a chart and its key.

`picture`, `written` and `photograph` read; `cells` and `comb` find how large a stitch is drawn; `ground` says
what is bare cloth; `choosing` takes threads of one card for the colours, `speckles` tidies, `marks` gives each
thread its sign, `together` says which colours became one; `chart_text` and `key_text` write what an author
reads and edits, `drawn` its pictures, `told` what was done.
"""
