package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.portable.LevellingEffect;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.evaluation.portable.SightLine;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** Puts the set-up card of a portable unit together as XHTML. */
public final class CardDocument {

    private static final double PICTURE_WIDTH_MM = 90;
    private static final double PICTURE_HEIGHT_MM = 27;
    /** Distances of the table of tilts that fit on the card, metres. */
    private static final List<Double> TILT_AT_M = List.of(100.0, 1000.0, 2000.0);

    private final Html html = new Html();
    private final ApproachAid aid;
    private final RuleSet rules;
    private final PortableSetUp found;
    private final boolean atRunway;

    private CardDocument(ApproachAid aid, RuleSet rules, PortableSetUp found) {
        this.aid = aid;
        this.rules = rules;
        this.found = found;
        atRunway = Projects.host(aid).filter(RunwayEnd.class::isInstance).isPresent();
    }

    /** Writes the card. */
    public static String write(Project project, ApproachAid aid, RuleSet rules, PortableSetUp found, ReportOptions options,
            Pictures pictures) throws ReportException {
        return new CardDocument(aid, rules, found).write(project, options, pictures);
    }

    private String write(Project project, ReportOptions options, Pictures pictures) throws ReportException {
        html.element("h1", "Set-up card").element("p class=\"big\"", found.label() + ", for " + found.date() + " only");
        if (!found.isReady()) {
            html.open("div class=\"stop\"").element("p", "NOT FOR USE YET").list(found.blockers().stream().map(Message::english).toList()).close("div");
        }
        Shell.cautions(html);
        strip();
        numbers();
        steps();
        sight();
        boolean chart = SignalScene.fits(found.siting());
        if (chart) {
            html.raw("<table class=\"pair\"><colgroup><col style=\"width:53%\" /><col style=\"width:47%\" /></colgroup><tbody><tr><td>");
            html.element("h2 class=\"flow\"", "Signals").raw(pictures.add(SignalScene.of(DrawnAid.of(aid, found.siting())),
                    PICTURE_WIDTH_MM, PICTURE_HEIGHT_MM)).raw("</td><td>");
        }
        tilt();
        if (chart) {
            html.raw("</td></tr></tbody></table>\n");
        }
        remarks();
        html.open("div class=\"signatures\"").table("sign", List.of(20, 35, 15, 30), List.of("Part", "Name", "Date and time",
                "Signature"));
        List.of("Set up by", "Checked by").forEach(part -> html.row("td", List.of(part, "", "", "")));
        html.endTable().close("div");
        return new Shell(project, options, OutcomeTables.ruleSet(rules)).document("Set-up card: " + found.label(),
                options.paper() == PaperSize.LETTER ? "card short" : "card", html.toString());
    }

    /** The three numbers that the hands need, so large that they are read at arm's length. */
    private void strip() {
        UnitPlan unit = found.siting().units().get(0);
        html.raw("<table class=\"strip\"><colgroup><col style=\"width:34%\" /><col style=\"width:33%\" /><col style=\"width:33%\" />"
                + "</colgroup>").open("thead").row("th scope=\"col\"", List.of("Set the unit to", "Turn the beam to", "Stand it at"))
                .close("thead").open("tbody").open("tr");
        html.element("td", Angles.format(unit.settingDeg()) + String.format(Locale.ROOT, "  =  %.3f\u00b0", unit.settingDeg()));
        html.element("td", String.format(Locale.ROOT, "%.1f\u00b0 by compass (%.1f\u00b0 true)", found.azimuth().beamMagneticDeg(), found
                .azimuth().beamTrueDeg()));
        html.element("td", String.format(Locale.ROOT, "%.2f m %s the %s, %s", Math.abs(unit.place().alongM()), unit.place().alongM() < 0
                ? "before" : "past", atRunway ? "threshold" : "hover point", side(unit.place().rightM())));
        html.close("tr").close("tbody").close("table");
    }

    private String battery() {
        return found.battery().map(battery -> String.format(Locale.ROOT, "Check the battery: %.0f to %.0f V with the unit lit; its %.0f Ah "
                + "feed it for at least %.1f h. Check the lamps", battery.supplyFromV(), battery.supplyToV(), battery.capacityAh(), battery
                        .leastHours())).orElse("Check supply and lamps");
    }

    private void numbers() {
        Siting siting = found.siting();
        UnitPlan unit = siting.units().get(0);
        List<String[]> facts = new ArrayList<>();
        facts.add(new String[] {"Rule set", OutcomeTables.ruleSet(rules)});
        facts.add(new String[] {"Approach slope", Numbers.angle(siting.slopeDeg()) + found.descent().map(descent -> "; from the descent: "
                + descent.text()).orElse("")});
        SiteFrame frame = SiteFrame.of(Projects.host(aid).orElseThrow());
        facts.add(new String[] {"Lens", String.format(Locale.ROOT, "%.2f m above the %s, elevation %.2f m", unit.place().heightM(), atRunway
                ? "threshold" : "TLOF", unit.place().heightM() + frame.originElevationM()) + frame.latLon(unit.place())
                        .map(place -> String.format(Locale.ROOT, "; latitude, longitude %.6f, %.6f", place.latitudeDeg(), place
                                .longitudeDeg())).orElse("")});
        facts.add(new String[] {"Magnetic variation", String.format(Locale.ROOT, "%+.2f\u00b0 (%s)", found.azimuth().variation()
                .variationDeg(), found.azimuth().variation().source())});
        facts.add(new String[] {"Sectors", sectors(unit)});
        html.element("h2 class=\"flow\"", "Numbers").facts(facts, 18);
    }

    private static String side(double rightM) {
        return Math.abs(rightM) < 0.005 ? "on the centre line"
                : String.format(Locale.ROOT, "%.2f m %s of the centre line", Math.abs(rightM), rightM < 0 ? "left" : "right");
    }

    private static String sectors(UnitPlan unit) {
        if (unit.edges().isEmpty()) {
            return "none";
        }
        StringBuilder text = new StringBuilder(word(unit.edges().get(0).below()));
        for (SectorEdge edge : unit.edges()) {
            text.append(" | ").append(Angles.format(edge.angleDeg())).append(" | ").append(word(edge.above()));
        }
        return text.toString();
    }

    private static String word(Light light) {
        String colour = light.colour().name().toLowerCase(Locale.ROOT);
        return light.form() == LightForm.OFF ? "no light" : light.form() == LightForm.STEADY ? colour
                : light.form().name().toLowerCase(Locale.ROOT) + " " + colour;
    }

    private void steps() {
        UnitPlan unit = found.siting().units().get(0);
        html.element("h2 class=\"flow\"", "Steps").open("ol");
        List.of("Have the operator's authorisation. Keep the power off until the last step.",
                "Mark the place and stand the unit on firm ground; measure the distance and the offset again.",
                String.format(Locale.ROOT, "Turn the beam to %.1f\u00b0 by compass, away from metal and cables; check it against a "
                        + "landmark.",
                        found.azimuth().beamMagneticDeg()),
                "Level the unit across its axis, then set " + Angles.format(unit.settingDeg()) + " with the clinometer and lock it.",
                "Walk the sight line below: nothing may stand through it.",
                battery() + ", switch on, and read the colours from below, on and above the slope.",
                "Measure the angle again after warming up, and whenever the unit was touched or the ground is soft.")
                .forEach(step -> html.element("li", step));
        html.close("ol");
    }

    private void sight() {
        html.element("h2 class=\"flow\"", "Sight line").table("data", List.of(50, 12, 16, 22), List.of("Line", "Angle", "Clear by",
                "Closest obstacle"));
        for (SightLine line : found.sight().lines()) {
            html.row("td", List.of(line.kind().message().english(), Angles.format(line.angleDeg()), line.lowestMarginM().isEmpty() ? "-"
                    : String.format(Locale.ROOT, "%.2f m%s", line.lowestMarginM().getAsDouble(), line.isClear() ? "" : "  BLOCKED"),
                    line.obstacle()
                            .isEmpty() ? "none in the sector" : line.obstacle()));
        }
        html.endTable();
    }

    private void tilt() {
        LevellingEffect effect = found.levelling();
        html.element("h2 class=\"flow\"", String.format(Locale.ROOT, "If the unit is tilted by %.0f'", effect.minutes()));
        html.table("numbers", List.of(25, 25, 25, 25), List.of("Distance m", "Path m", "Tilted down m", "Tilted up m"));
        effect.heights().stream().filter(height -> TILT_AT_M.contains(height.distanceM())).forEach(height -> html.row("td", List.of(
                String.format(Locale.ROOT, "%.0f", height.distanceM()), Numbers.two(height.heightM()), "-" + Numbers.two(height.downM()),
                "+" + Numbers.two(height.upM()))));
        html.endTable();
    }

    private void remarks() {
        List<String> remarks = new ArrayList<>(found.notes().stream().map(Message::english).toList());
        Optional<String> curvature = found.sight().governing().map(line -> line.curvature().english());
        curvature.ifPresent(text -> remarks.add("The sight line that governs: " + text + "."));
        if (!found.toConfirm().isEmpty()) {
            remarks.add("To be confirmed against the issued documents: " + String.join(", ", found.toConfirm().stream()
                    .map(citation -> citation.key()).distinct().toList()) + ".");
        }
        if (!remarks.isEmpty()) {
            html.element("h2 class=\"flow\"", "Remarks").open("div class=\"remarks\"").list(remarks).close("div");
        }
    }
}
