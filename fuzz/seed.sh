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
for rig in ../models/rigs/*.toml; do text 1 "$rig"; done
for setup in ../models/setups/*.toml; do text 2 "$setup"; done
for camera in ../samples/good/camera.toml ../models/cameras/*.toml; do [ -f "$camera" ] && text 3 "$camera"; done
for board in ../models/boards/*.toml; do text 4 "$board"; done
cp seeds/photo/* corpus/photo/
cp seeds/evidence/* corpus/evidence/ 2>/dev/null || true
