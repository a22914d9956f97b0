#!/bin/sh
# Quotes an order: quote.sh ADDRESS ORDER.json. Needs curl and jq.
set -eu
answer=$(mktemp)
trap 'rm -f "$answer"' EXIT

# Sends the order again where the service is busy, after the time that it names.
status=$(curl --silent --show-error --retry 4 --output "$answer" --write-out '%{http_code}' \
  --header 'Content-Type: application/json' --data "@$2" "$1/v1/quotes")

if [ "$status" = 200 ]; then
  jq -r '(.yardage[] | "\(.fabric): \(.soldLength) \(.soldUnit)"), (.cost // empty | "\(.total) \(.currency)")' "$answer"
else
  jq -r '.title, (.violations[] | "\(.pointer): \(.detail)")' "$answer" >&2
  exit 1
fi
