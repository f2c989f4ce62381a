package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;

/** What the pilot reads at which elevation, from so far out that the distance of the units from each other does not count. */
final class SignalTable {

    private static final double FAR_M = 1e6;
    private static final double BEYOND_DEG = 0.5;

    private final Html html;
    private final ReportWords words;

    SignalTable(Html html) {
        this.html = html;
        words = html.words();
    }

    /** One pattern and the angles between which it is seen. */
    private record Band(double fromDeg, double toDeg, Observation seen) {

        boolean isLike(Observation other) {
            return seen.meanings().equals(other.meanings())
                    && seen.seen().stream().map(SeenUnit::light).toList().equals(other.seen().stream().map(SeenUnit::light).toList());
        }
    }

    /** Adds the table; nothing for panels, which have no lights. */
    void write(Siting siting) {
        List<Band> bands = bands(siting);
        if (bands.isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("signals").table("data", List.of(14, 14, 46, 26), "from", "to", "units-outward", "reads");
        for (int i = bands.size() - 1; i >= 0; i--) {
            Band band = bands.get(i);
            html.open("tr").element("td", i == 0 ? words.term("lower") : words.minutes(band.fromDeg()))
                    .element("td", i == bands.size() - 1 ? words.term("higher") : words.minutes(band.toDeg())).open("td");
            band.seen().seen().forEach(this::lamp);
            html.close("td").element("td", String.join(", ", band.seen().meanings().entrySet().stream()
                    .map(path -> (path.getKey().isEmpty() ? "" : words.term("path." + path.getKey()) + ": ")
                            + words.term("meaning", path.getValue())).toList())).close("tr");
        }
        html.endTable().remark("signal-codes").close("div");
    }

    private static List<Band> bands(Siting siting) {
        TreeSet<Double> edges = new TreeSet<>();
        siting.units().forEach(unit -> unit.edges().forEach(edge -> edges.add(Math.round(edge.angleDeg() * 1e6) / 1e6)));
        List<Band> bands = new ArrayList<>();
        if (edges.isEmpty()) {
            return bands;
        }
        List<Double> limits = new ArrayList<>(edges);
        limits.add(0, edges.first() - BEYOND_DEG);
        limits.add(edges.last() + BEYOND_DEG);
        for (int i = 1; i < limits.size(); i++) {
            double middle = (limits.get(i - 1) + limits.get(i)) / 2;
            FramePoint eye = new FramePoint(siting.reference().alongM() - FAR_M, 0, siting.reference().heightM() + FAR_M * Angles.tanDeg(
                    middle));
            Observation seen = Signals.observe(siting, eye);
            Band last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
            if (last != null && last.isLike(seen)) {
                bands.set(bands.size() - 1, new Band(last.fromDeg(), limits.get(i), last.seen()));
            } else {
                bands.add(new Band(limits.get(i - 1), limits.get(i), seen));
            }
        }
        return bands;
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
