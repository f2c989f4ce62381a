package slopewright.report.internal.chapters;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.messages.Words;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.Meaning;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.SignalBand;
import slopewright.siting.Siting;

/** What the pilot reads at which elevation, from so far out that the distance of the units from each other does not count. */
final class SignalTable {

    private static final String LEFT = "-left";
    private static final String RIGHT = "-right";
    private static final double ON_SLOPE_M = 2000;
    private static final double SAME_DEG = 1e-4;

    private final Html html;
    private final ReportWords words;

    SignalTable(Html html) {
        this.html = html;
        words = html.words();
    }

    /** Adds the table; nothing for panels, which have no lights. */
    void write(Siting siting) {
        List<SignalBand> bands = SignalBand.of(siting);
        if (bands.isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("signals").table("data", List.of(14, 14, 46, 26), "from", "to", "units-outward", "reads");
        boolean banded = bands.stream().anyMatch(band -> band.seen().meanings().containsValue(Meaning.ON_SLOPE));
        Optional<Observation> between = banded ? Optional.empty() : SignalBand.onSlope(siting, ON_SLOPE_M);
        for (int i = bands.size() - 1; i >= 0; i--) {
            SignalBand band = bands.get(i);
            row(i == 0 ? words.term("lower") : words.minutes(band.fromDeg()), i == bands.size() - 1 ? words.term("higher")
                    : words.minutes(band.toDeg()), band.seen());
            if (between.isPresent() && i > 0 && Math.abs(band.fromDeg() - siting.slopeDeg()) < SAME_DEG) {
                row(words.minutes(siting.slopeDeg()), words.term("on-it"), between.get());
            }
        }
        html.endTable().remark("signal-codes");
        between.ifPresent(seen -> html.remark("signal-on-slope", Words.wholeM(ON_SLOPE_M)));
        html.close("div");
    }

    private void row(String from, String to, Observation observed) {
        html.open("tr").element("td", from).element("td", to).open("td");
        lamps(observed.seen());
        html.close("td").element("td", String.join(", ", observed.meanings().entrySet().stream()
                .map(path -> (path.getKey().isEmpty() ? "" : words.term("path." + path.getKey()) + ": ")
                        + words.term("meaning", path.getValue())).toList())).close("tr");
    }

    /** Lamps that show the same on both sides of the runway stand once, without the word for the side. */
    private void lamps(List<SeenUnit> seen) {
        Map<String, Light> left = new LinkedHashMap<>();
        seen.stream().filter(unit -> unit.unit().id().endsWith(LEFT)).forEach(unit -> left.put(bare(unit, LEFT), unit.light()));
        boolean alike = !left.isEmpty() && seen.size() == 2 * left.size() && seen.stream().filter(unit -> unit.unit().id().endsWith(RIGHT))
                .filter(unit -> unit.light().equals(left.get(bare(unit, RIGHT)))).count() == left.size();
        if (alike) {
            left.forEach(this::lamp);
        } else {
            seen.forEach(unit -> lamp(unit.unit().id(), unit.light()));
        }
    }

    private static String bare(SeenUnit unit, String side) {
        String id = unit.unit().id();
        return id.substring(0, id.length() - side.length());
    }

    private void lamp(String name, Light light) {
        html.raw("<span class=\"lamp " + light.colour().key() + "\">").text(name + " " + code(light)).raw("</span> ");
    }

    private String code(Light light) {
        if (light.form() == LightForm.OFF) {
            return "\u2013";
        }
        String form = light.form() == LightForm.STEADY ? "" : words.term("light-form", light.form());
        return form + words.term("light-colour", light.colour());
    }
}
