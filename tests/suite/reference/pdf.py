"""Reads a PDF with pikepdf and its QR codes with OpenCV: {"pdf", "pages"} in
(pages: pictures of the pages, PNG), structure, metadata and codes out."""

import json
import sys

import cv2
import pikepdf

given = json.load(sys.stdin)
with pikepdf.open(given["pdf"]) as pdf:
    root = pdf.Root
    roles = {}
    figures = {"all": 0, "with words": 0}
    heads = {"all": 0, "scoped": 0}

    def walk(node):
        if isinstance(node, pikepdf.Array):
            for child in node:
                walk(child)
        elif isinstance(node, pikepdf.Dictionary) and "/S" in node:
            role = str(node["/S"])
            roles[role] = roles.get(role, 0) + 1
            if role == "/Figure":
                figures["all"] += 1
                figures["with words"] += len(str(node.get("/Alt", ""))) > 0
            if role == "/TH":
                heads["all"] += 1
                attributes = node.get("/A", pikepdf.Dictionary())
                if isinstance(attributes, pikepdf.Dictionary):
                    attributes = [attributes]
                heads["scoped"] += any("/Scope" in a for a in attributes)
            if "/K" in node:
                walk(node["/K"])
        elif isinstance(node, pikepdf.Dictionary) and "/K" in node:
            walk(node["/K"])

    walk(root.StructTreeRoot)
    with pdf.open_metadata() as meta:
        pdfa = [meta.get("pdfaid:part"), meta.get("pdfaid:conformance"), meta.get("pdfuaid:part")]
        title = meta.get("dc:title")
    filters = sorted({str(i.get("/Filter")) for p in pdf.pages for i in p.get_images().values()})
    answer = {
        "pdfa": pdfa,
        "title": title,
        "language": str(root.Lang),
        "marked": bool(root.MarkInfo.Marked),
        "shows_title": bool(root.ViewerPreferences.DisplayDocTitle),
        "intents": [str(i.S) for i in root.OutputIntents],
        "encrypted": pdf.is_encrypted,
        "scripts": any(k in root for k in ("/OpenAction", "/AA", "/AcroForm")),
        "pages": len(pdf.pages),
        "tab_order": [str(p.get("/Tabs")) for p in pdf.pages],
        "roles": roles,
        "figures": figures,
        "heads": heads,
        "image_filters": filters,
        "outline": len(list(pdf.open_outline().root)),
    }
reader = cv2.QRCodeDetector()


def code(picture):
    """The reader fails on some codes at one size and not at another."""
    for scale in (1.0, 2.0, 1.5, 3.0, 0.75):
        text = reader.detectAndDecode(cv2.resize(picture, None, fx=scale, fy=scale, interpolation=cv2.INTER_CUBIC))[0]
        if text:
            return text
    return ""


answer["codes"] = []
for path in given["pages"]:
    page = cv2.imread(path)
    height, width = page.shape[:2]
    answer["codes"].append(code(page[int(height * 0.85) :, int(width * 0.75) :]))
print(json.dumps(answer))
