package slopewright.report.internal.chapters;

import java.util.List;

import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SeenUnit;
import slopewright.siting.SignalBand;
import slopewright.siting.Siting;

/** What the pilot reads at which elevation, from so far out that the distance of the units from each other does not count. */
final class SignalTable {

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
        for (int i = bands.size() - 1; i >= 0; i--) {
            SignalBand band = bands.get(i);
            html.open("tr").element("td", i == 0 ? words.term("lower") : words.minutes(band.fromDeg()))
                    .element("td", i == bands.size() - 1 ? words.term("higher") : words.minutes(band.toDeg())).open("td");
            band.seen().seen().forEach(this::lamp);
            html.close("td").element("td", String.join(", ", band.seen().meanings().entrySet().stream()
                    .map(path -> (path.getKey().isEmpty() ? "" : words.term("path." + path.getKey()) + ": ")
                            + words.term("meaning", path.getValue())).toList())).close("tr");
        }
        html.endTable().remark("signal-codes").close("div");
    }

    private void lamp(SeenUnit seen) {
        html.raw("<span class=\"lamp " + seen.light().colour().key() + "\">").text(seen.unit().id() + " " + code(seen.light()))
                .raw("</span> ");
    }

    private String code(Light light) {
        if (light.form() == LightForm.OFF) {
            return "\u2013";
        }
        String form = light.form() == LightForm.STEADY ? "" : words.term("light-form", light.form());
        return form + words.term("light-colour", light.colour());
    }
}
