#!/bin/sh
# A study of Warmvat as an array job of eight parts, and a merge that waits for them all.
#   slurm-shards.sh OUT vary|spread|choose DESIGN ...    (the command without --out and --shard; no quotes in its words)
# WARMVAT names the program where it is not on the path. What the jobs say goes to OUT.log, the parts to OUT.parts.
set -eu
out=${1:?a new folder for the results}
shift
warmvat=${WARMVAT:-warmvat}
command=$(printf "'%s' " "$warmvat" "$@")
mkdir -p "$out.parts" "$out.log"
parts=$(sbatch --parsable --array=1-8 --output="$out.log/part-%a.txt" --wrap \
    "$command --quiet --shard \$SLURM_ARRAY_TASK_ID/\$SLURM_ARRAY_TASK_COUNT --out '$out.parts/'\$SLURM_ARRAY_TASK_ID")
sbatch --wait --dependency=afterok:"$parts" --kill-on-invalid-dep=yes --output="$out.log/merge.txt" --wrap \
    "'$warmvat' merge '$out.parts'/* --quiet --out '$out'" || true
# sbatch --wait returns 0 for a merge that was cancelled because a part failed
[ -f "$out/summary.json" ] || { echo "the parts could not be joined: see $out.log" >&2; exit 1; }
