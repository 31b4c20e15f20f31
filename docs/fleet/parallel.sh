#!/usr/bin/env bash
# A fleet on a few computers by GNU parallel. Beside the fleet file:
#
#   parallel.sh my-fleet.yaml 16                      # sixteen shares on this computer, one a core
#   parallel.sh my-fleet.yaml 16 --sshlogin a,b       # on two others over ssh, which see the same folder
#
# The same command again makes only what is not done yet (shares.log). Then it puts the shares together.
set -euo pipefail

fleet=$1 shares=$2
shift 2
leadwright=${LEADWRIGHT:-leadwright}
formats=${FORMATS:+--formats $FORMATS}

seq "$shares" | parallel --will-cite --workdir . --joblog shares.log --resume-failed --retries 3 "$@" \
  "$leadwright fleet $fleet --shard {}/$shares --out share-{} --cache share-{} --jobs 1 $formats"
exec $leadwright merge "$fleet" $(seq --format 'share-%g' "$shares") $formats
