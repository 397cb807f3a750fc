"""Validates a signed PDF with pyHanko (ETSI EN 319 142-1's profile) and opens it
with pikepdf: {"pdf", "root", "tsa"} in (files; tsa may be null), what they found out."""

import asyncio
import json
import sys

import pikepdf
from pyhanko.keys import load_cert_from_pemder
from pyhanko.pdf_utils.reader import PdfFileReader
from pyhanko.sign.validation import async_validate_pdf_signature
from pyhanko_certvalidator import ValidationContext

given = json.load(sys.stdin)
roots = [load_cert_from_pemder(given["root"])]
stampers = [load_cert_from_pemder(given["tsa"])] if given["tsa"] else []


async def validate(signature):
    def context(trusted):
        return ValidationContext(trust_roots=trusted, allow_fetching=False, revocation_mode="soft-fail")

    return await async_validate_pdf_signature(
        signature, signer_validation_context=context(roots), ts_validation_context=context(stampers)
    )


with open(given["pdf"], "rb") as file:
    signatures = PdfFileReader(file).embedded_signatures
    signature = signatures[0]
    status = asyncio.run(validate(signature))
    signed = [a["type"].native for a in signature.signer_info["signed_attrs"]]
    stamp = status.timestamp_validity
    answer = {
        "signatures": len(signatures),
        "intact": status.intact,
        "valid": status.valid,
        "trusted": status.trusted,
        "bottom_line": status.bottom_line,
        "coverage": status.coverage.name,
        "docmdp_ok": status.docmdp_ok,
        "signed_attributes": sorted(signed),
        "subfilter": str(signature.sig_object["/SubFilter"]),
        "permission": int(signature.docmdp_level.value),
        "claimed": signature.self_reported_timestamp.isoformat(),
        "stamp": None if stamp is None else {"intact": stamp.intact, "valid": stamp.valid, "trusted": stamp.trusted},
        "certificates": len(signature.other_embedded_certs) + 1,
    }
with pikepdf.open(given["pdf"]) as pdf, pdf.open_metadata() as meta:
    field = pdf.Root.AcroForm.Fields[0]
    answer["pdfa"] = [meta.get("pdfaid:part"), meta.get("pdfaid:conformance"), meta.get("pdfuaid:part")]
    answer["marked"] = bool(pdf.Root.MarkInfo.Marked)
    answer["field"] = str(field.TU)
    answer["flags"] = int(field.F)
    answer["rectangle"] = [float(n) for n in field.Rect]
    answer["on_first_page"] = field.objgen in [a.objgen for a in pdf.pages[0].Annots]
    answer["scripts"] = any(k in pdf.Root for k in ("/OpenAction", "/AA"))
    answer["pages"] = len(pdf.pages)
print(json.dumps(answer))
