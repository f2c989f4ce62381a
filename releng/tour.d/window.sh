# Shared by the walks of this folder: the product's window, its keys and mouse, and the count of what was looked at. Sourced, never run.
# Word of a walk: the folder to work in, where pictures of each part stay.
# shellcheck shell=bash
# shellcheck source=../lib.sh
. "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/../lib.sh"

readonly BUSY_TICKS=4
readonly PATIENCE=400

folder=$1
project=$folder/tour.slopewright
passed=0
failures=0
window=
trap end_window EXIT
rm -rf "$folder"
mkdir -p "$folder"

ok() {
    printf 'ok %s\n' "$1"
    passed=$((passed + 1))
}

finish() {
    printf '%d ok, %d failed\n' "$passed" "$failures"
    [ "$failures" -eq 0 ]
    exit
}

# failed WHAT : ends the tour, for nothing that follows could be right.
failed() {
    printf 'FAILED %s; see %s\n' "$1" "${folder#"$root"/}/failed.png"
    picture failed
    failures=$((failures + 1))
    finish
}

picture() {
    import -window root "$folder/$1.png"
}

# keep_picture NAME : keeps a picture of what is shown now; with SLOPEWRIGHT_NEW_PICTURES it takes the place of the one in the tree.
keep_picture() {
    picture "$1"
    if [ -n "${SLOPEWRIGHT_NEW_PICTURES:-}" ]; then
        mkdir -p "$pictures"
        convert "$folder/$1.png" -trim +repage -resize '1000x>' -dither None -colors 40 -strip "PNG8:$pictures/$1.png"
    fi
}

end_window() {
    [ -n "$window" ] || return 0
    kill -9 "$window" 2> /dev/null || true
    wait "$window" 2> /dev/null || true
    window=
}

# until_true SECONDS COMMAND... : waits until a command succeeds.
until_true() {
    local left=$(($1 * 5))
    shift
    while ! "$@" > /dev/null 2>&1; do
        left=$((left - 1))
        [ "$left" -gt 0 ] || return 1
        sleep 0.2
    done
}

ticks() {
    awk '{ print $14 + $15 }' "/proc/$window/stat"
}

# is_running : whether a thread of the window runs, or would if the machine let it.
is_running() {
    cat "/proc/$window"/task/*/stat 2> /dev/null | sed 's/.*) //' | grep -q '^R'
}

# settle : waits until the window has answered what was typed, which it shows by doing next to nothing, also on a machine that is busy.
settle() {
    local before now tries=0
    before=$(ticks)
    while sleep 0.15; do
        now=$(ticks)
        tries=$((tries + 1))
        if [ "$tries" -ge "$PATIENCE" ] || { [ $((now - before)) -lt "$BUSY_TICKS" ] && ! is_running; }; then
            return 0
        fi
        before=$now
    done
}

press() {
    xdotool key --clearmodifiers "$@"
    settle
}

# go_on : presses the default button of a dialog, which the toolkit shows as pressed for a quarter of a second before it acts.
go_on() {
    press Return
    sleep 0.4
    settle
}

type_text() {
    xdotool type --clearmodifiers --delay 8 -- "$1"
    settle
}

click() {
    xdotool mousemove "$1" "$2"
    settle
    xdotool click 1
    settle
}

# is_active NAME : whether the window with the focus has a name like this.
is_active() {
    [[ $(xdotool getactivewindow getwindowname) == *"$1"* ]]
}

# table KIND : shows a table of the site by the first letters of its name.
table() {
    press ctrl+shift+t
    type_text "$1"
}

# fill ANSWER... : types answers from field to field; an answer - stays as it is.
fill() {
    local answer is_first=yes
    for answer in "$@"; do
        [ -n "$is_first" ] || press Tab
        is_first=
        [ "$answer" = - ] || type_text "$answer"
    done
}

# row CELL... : opens the first row, or a new one, and types its cells from left to right; a cell - stays as it is.
row() {
    press Return
    fill "$@"
    press Return
}

# paste_rows : pastes what comes in.
paste_rows() {
    xclip -selection clipboard -i > /dev/null 2>&1
    press ctrl+v
}

save() {
    press ctrl+s
    until_true 20 test -s "$project" || failed "the project was not saved"
    sleep 0.5
}

# hand_over FOLDER FILE : has what is usual written into a folder, and waits for one file of it.
hand_over() {
    click 20 32
    press Up Up Return
    until_true 20 is_active 'Hand over' || failed "the hand-over did not open"
    fill - - - - "$1"
    go_on
    sleep 2
    settle
    picture hand-over
    go_on
    until_true 120 test -s "$1/$2" || failed "$2 was not handed over"
    settle
    press Escape
}

# read_back PERSON : begins to read back as a second person.
read_back() {
    click 60 32
    press Up Return
    until_true 20 is_active 'Read back' || failed "a read-back was not offered"
    type_text "$1"
}

# holds COUNT ELEMENT : whether the saved project has so many elements of a name.
holds() {
    [ "$(grep -o "<$2[ >]" "$project" | wc -l)" -eq "$1" ] || failed "$2: not $1 in the saved project"
}

# open_window [FILE] : starts the product with settings of its own, with a project where one is named, and waits until it is there.
open_window() {
    SLOPEWRIGHT_DATA=$folder/settings "$product/slopewright" "$@" > "$folder/window.log" 2>&1 < /dev/null &
    window=$!
    until_true 120 xdotool search --onlyvisible --name 'Welcome|tour.slopewright' || failed "the window did not open"
    sleep 2
    settle
}

# show_project : waits for the window of the project that was opened and gives it the size for which a walk knows where things are; a search
# ends with an error where another window goes while it looks, so it is repeated.
show_project() {
    until_true 60 xdotool search --onlyvisible --name 'tour.slopewright' windowactivate windowsize 1600 980 windowmove 0 0 \
        || failed "the project did not open"
    sleep 1
    settle
}
