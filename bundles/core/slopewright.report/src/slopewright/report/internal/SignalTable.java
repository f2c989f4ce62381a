package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
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

    SignalTable(Html html) {
        this.html = html;
    }

    /** One pattern and the angles between which it is seen. */
    private record Band(double fromDeg, double toDeg, Observation seen, String pattern) {
    }

    /** Adds the table; nothing for panels, which have no lights. */
    void write(Siting siting) {
        List<Band> bands = bands(siting);
        if (bands.isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("Signals").table("data", List.of(14, 14, 46, 26), List.of("From", "To",
                "Units, from the runway outward",
                "Reads"));
        for (int i = bands.size() - 1; i >= 0; i--) {
            Band band = bands.get(i);
            html.open("tr").element("td", i == 0 ? "below" : Angles.format(band.fromDeg())).element("td", i == bands.size() - 1 ? "above"
                    : Angles.format(band.toDeg())).open("td");
            band.seen().seen().forEach(this::lamp);
            html.close("td").element("td", String.join(", ", band.seen().meanings().entrySet().stream()
                    .map(path -> (path.getKey().isEmpty() ? "" : path.getKey() + " path: ") + path.getValue().key().replace('-', ' '))
                    .toList())).close("tr");
        }
        html.endTable().element("p class=\"small\"",
                "W white, R red, G green, A amber; p pulsating, f flashing, \u2013 no light. Angles are "
                + "elevations at the units, seen from far out on the axis; between two patterns lies the change of colour.").close("div");
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
            String pattern = seen.seen().stream().map(SignalTable::code).toList() + seen.meanings().toString();
            Band last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
            if (last != null && last.pattern().equals(pattern)) {
                bands.set(bands.size() - 1, new Band(last.fromDeg(), limits.get(i), last.seen(), pattern));
            } else {
                bands.add(new Band(limits.get(i - 1), limits.get(i), seen, pattern));
            }
        }
        return bands;
    }

    private void lamp(SeenUnit seen) {
        html.raw("<span class=\"lamp " + seen.light().colour().name().toLowerCase(Locale.ROOT) + "\">").say(seen.unit().id() + " " + code(
                seen)).raw("</span> ");
    }

    private static String code(SeenUnit seen) {
        Light light = seen.light();
        if (light.form() == LightForm.OFF) {
            return "\u2013";
        }
        String form = switch (light.form()) {
            case PULSATING -> "p";
            case FLASHING -> "f";
            default -> "";
        };
        return form + light.colour().name().charAt(0);
    }
}
