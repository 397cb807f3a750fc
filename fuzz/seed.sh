#!/usr/bin/env bash
# Seeds for the fuzz targets, from the project's own samples and models.
set -euo pipefail
cd "$(dirname "$0")"
mkdir -p corpus/photo corpus/texts corpus/evidence corpus/result
# A byte that picks the format (targets/texts.rs), then the text.
text() {
    local pick="$1" file="$2"
    { printf "\\x0$pick"; cat "$file"; } >"corpus/texts/$pick-$(basename "$file")"
}
for job in ../samples/good/job.toml ../samples/wrong/job.toml; do
    { printf '\x00'; cat "$job"; } >"corpus/texts/0-$(basename "$(dirname "$job")").toml"
done
for kit in ../models/kits/*.toml; do text 1 "$kit"; done
for setup in ../models/setups/*.toml; do text 2 "$setup"; done
for camera in ../samples/good/camera.toml ../models/cameras/*.toml; do [ -f "$camera" ] && text 3 "$camera"; done
for board in ../models/boards/*.toml; do text 4 "$board"; done
cp seeds/photo/* corpus/photo/
cp seeds/evidence/* corpus/evidence/ 2>/dev/null || true
mkdir -p corpus/exif corpus/heic corpus/tar corpus/folder corpus/requests

# A HEIC picture, and EXIF records alone: behind a byte that says where they stand.
cp ../tests/data/wave.heic corpus/heic/
python3 - <<'PYTHON'
from pathlib import Path

photo = Path("seeds/photo/exif.jpg").read_bytes()
at = photo.index(b"Exif\0\0") + 6
end = at - 8 + int.from_bytes(photo[at - 8 : at - 6], "big")
for pick in range(3):
    Path(f"corpus/exif/{pick}").write_bytes(bytes([pick]) + photo[at:end])

# Files of a folder with three zero bytes between them (targets/folder.rs).
job = [Path("../samples/good", n).read_text() for n in ("job.toml", "kit.toml", "setup.toml", "camera.toml")]
Path("corpus/folder/job").write_bytes(b"\1" + b"\0\0\0".join(t.encode() for t in job))
lines = ("0" * 128 + "  data/job.toml\n" + "0" * 128 + "  data/result.json\n").encode()
bag = [b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n", b"Payload-Oxum: 2.2\n", lines, lines, b"-----BEGIN SSH SIGNATURE-----\n", b"x", b"{}"]
Path("corpus/folder/evidence").write_bytes(b"\0" + b"\0\0\0".join(bag))

# Requests: a byte that says of which kind, path, headers, body (targets/requests.rs).
def ask(name, kind, path, head="", body=b""):
    Path(f"corpus/requests/{name}").write_bytes(bytes([kind]) + f"{path}\n{head}\n\n".encode() + body)

Path("corpus/requests/wire").write_bytes(b"\0GET / HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n5\r\nhello\r\n0\r\n\r\n")
for i, page in enumerate(["/", "/new", "/new/demo-front-radar", "/pair", "/language/de", "/page.js", "/jobs/JOB/",
                          "/jobs/JOB/prepare", "/jobs/JOB/photos", "/jobs/JOB/finish", "/jobs/JOB/live?part=finish",
                          "/jobs/JOB/picture?file=photos%2Fa.jpg", "/jobs/JOB/report", "/jobs/JOB/card", "/?q=demo&from=3"]):
    ask(f"page-{i}", 1, page, "Accept: text/html\nCookie: language=de; baywitness-device=x\nAccept-Language: de;q=0.8,en")
ask("prepare", 2, "/jobs/JOB/prepare", "", b"description=x&vin=1M8GDM9AXKP042788&wheelbase=2700&nose=3560,5&hub=318&tyre_pressures_set=yes&then=photos")
ask("calibration", 2, "/jobs/JOB/calibration", "", b"result=successful&azimuth=0.2&elevation=-0.1")
ask("aside", 2, "/jobs/JOB/aside", "", b"file=photos/a.jpg&page=finish")
ask("back", 2, "/jobs/JOB/back", "", b"file=photos/a.jpg")
ask("card-made", 2, "/jobs/JOB/card", "", b"")
ask("pair-typed", 2, "/pair", "", b"code=ABCDE-FGHJK")
ask("attachment", 3, "/jobs/JOB/files?kind=scan-before&name=before.pdf", "", b"%PDF-1.7 nothing")
for name in ("grey.png", "exif.jpg"):
    ask(f"photo-{name}", 3, "/jobs/JOB/photos", "", Path("seeds/photo", name).read_bytes())
PYTHON

# An evidence folder as one file.
room="$(mktemp -d)"
mkdir -p "$room/E-1/data"
printf 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n' >"$room/E-1/bagit.txt"
cp ../samples/good/job.toml "$room/E-1/data/"
(cd "$room" && tar --format=gnu --sort=name --mtime=@0 --owner=0 --group=0 -cf - E-1/bagit.txt E-1/data/job.toml) >corpus/tar/two.tar
{ printf '\x02'; cat corpus/tar/two.tar; } >corpus/evidence/two
rm -r "$room"
