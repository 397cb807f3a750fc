"""Reads a log of attempts with nothing but the standard library: RFC 6962's trees,
C2SP's tiles, bundles, checkpoints and proofs, written from their specifications.

{"folder", "proofs": [text]} in; {"size", "root", "entries", "proofs": [bool], "tiles": [...]} out.
"""

import base64
import hashlib
import json
import os
import sys


def leaf(entry):
    return hashlib.sha256(b"\0" + entry).digest()


def mth(hashes):
    """RFC 6962, 2.1, over leaf hashes."""
    if not hashes:
        return hashlib.sha256(b"").digest()
    if len(hashes) == 1:
        return hashes[0]
    k = 1
    while 2 * k < len(hashes):
        k *= 2
    return hashlib.sha256(b"\1" + mth(hashes[:k]) + mth(hashes[k:])).digest()


def path(n, hashes):
    """RFC 6962, 2.1.1."""
    if len(hashes) <= 1:
        return []
    k = 1
    while 2 * k < len(hashes):
        k *= 2
    if n < k:
        return path(n, hashes[:k]) + [mth(hashes[k:])]
    return path(n - k, hashes[k:]) + [mth(hashes[:k])]


def number(n):
    parts = [f"{n % 1000:03}"]
    while n >= 1000:
        n //= 1000
        parts.insert(0, f"x{n % 1000:03}")
    return "/".join(parts)


def read(folder, kind, n, width):
    name = f"tile/{kind}/{number(n)}" + ("" if width == 256 else f".p/{width}")
    with open(os.path.join(folder, name), "rb") as file:
        return file.read()


def widths(count):
    return [256] * (count // 256) + ([count % 256] if count % 256 else [])


def entries(folder, size):
    found = []
    for n, width in enumerate(widths(size)):
        data, at = read(folder, "entries", n, width), 0
        for _ in range(width):
            length = int.from_bytes(data[at : at + 2], "big")
            found.append(data[at + 2 : at + 2 + length])
            at += 2 + length
        assert at == len(data), "a bundle is longer than its entries"
    return found


asked = json.load(sys.stdin)
folder = asked["folder"]
with open(os.path.join(folder, "checkpoint"), encoding="utf-8") as file:
    origin, size, root = file.read().split("\n")[:3]
size, root = int(size), base64.b64decode(root)
found = entries(folder, size)
hashes = [leaf(entry) for entry in found]
level, here, tiles = 0, hashes, []
while here:
    for n, width in enumerate(widths(len(here))):
        wanted = b"".join(here[n * 256 : n * 256 + width])
        tiles.append(read(folder, level, n, width) == wanted)
    here = [mth(here[i : i + 256]) for i in range(0, len(here) // 256 * 256, 256)]
    level += 1


def holds(text):
    head, note = text.split("\n\n", 1)
    first, extra, index, *steps = head.split("\n")
    index, entry = int(index.split(" ")[1]), base64.b64decode(extra.split(" ")[1])
    _, within, top = note.split("\n")[:3]
    some = hashes[: int(within)]
    return (
        first == "c2sp.org/tlog-proof@v1"
        and entry == found[index]
        and [base64.b64decode(s) for s in steps if s] == path(index, some)
        and base64.b64decode(top) == mth(some)
    )


print(
    json.dumps(
        {
            "size": size,
            "root": mth(hashes) == root,
            "tiles": tiles,
            "entries": [json.loads(e)["job"] for e in found],
            "proofs": [holds(p) for p in asked["proofs"]],
        }
    )
)
