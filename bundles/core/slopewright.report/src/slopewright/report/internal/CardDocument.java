package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.DrawnAid;
import slopewright.drawing.SignalScene;
import slopewright.geometry.Angles;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.portable.LevellingEffect;
import slopewright.siting.portable.PortableSetUp;
import slopewright.siting.portable.SightLine;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** Puts the set-up card of a portable unit together as XHTML. */
public final class CardDocument {

    private static final double PICTURE_WIDTH_MM = 90;
    private static final double PICTURE_HEIGHT_MM = 38;

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
        html.element("h1", "Set-up card").element("p class=\"big\"", found.label());
        if (!found.isReady()) {
            html.open("div class=\"stop\"").element("p", "NOT FOR USE YET").list(found.blockers()).close("div");
        }
        Shell.cautions(html);
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
        ClosingChapter.signatures(html, List.of("Set up by", "Checked by"));
        remarks();
        return new Shell(project, options, OutcomeTables.ruleSet(rules)).document("Set-up card: " + found.label(), "card", html.toString());
    }

    private void numbers() {
        Siting siting = found.siting();
        UnitPlan unit = siting.units().get(0);
        String origin = atRunway ? "threshold" : "hover point";
        List<String[]> facts = new ArrayList<>();
        facts.add(new String[] {"Day of the set-up", found.date() + ", valid for this site and day"});
        facts.add(new String[] {"Rule set", OutcomeTables.ruleSet(rules)});
        facts.add(new String[] {"Approach slope", Numbers.angle(siting.slopeDeg())});
        found.descent().ifPresent(descent -> facts.add(new String[] {"From the descent", descent.text()}));
        facts.add(new String[] {"Place of the unit", String.format(Locale.ROOT, "%.2f m %s the %s, %s", Math.abs(unit.place().alongM()),
                unit
                .place().alongM() < 0 ? "before" : "past", origin, side(unit.place().rightM()))});
        SiteFrame frame = SiteFrame.of(Projects.host(aid).orElseThrow());
        frame.latLon(unit.place()).ifPresent(place -> facts.add(new String[] {"Latitude, longitude", String.format(Locale.ROOT,
                "%.6f, %.6f", place.latitudeDeg(), place.longitudeDeg())}));
        facts.add(new String[] {"Lens", String.format(Locale.ROOT, "%.2f m above the %s, elevation %.2f m", unit.place().heightM(), atRunway
                ? "threshold" : "TLOF", unit.place().heightM() + frame.originElevationM())});
        facts.add(new String[] {"Turn the beam to", String.format(Locale.ROOT, "%.1f\u00b0 by compass (%.1f\u00b0 true)", found.azimuth()
                .beamMagneticDeg(), found.azimuth().beamTrueDeg())});
        facts.add(new String[] {"Magnetic variation", String.format(Locale.ROOT, "%+.2f\u00b0 (%s)", found.azimuth().variation()
                .variationDeg(), found.azimuth().variation().source())});
        facts.add(new String[] {"Set the unit to", Angles.format(unit.settingDeg()) + String.format(Locale.ROOT, "  =  %.3f\u00b0",
                unit.settingDeg())});
        facts.add(new String[] {"Sectors", sectors(unit)});
        found.battery().ifPresent(battery -> facts.add(new String[] {"Battery", String.format(Locale.ROOT,
                "%.0f Ah, at least %.1f h; supply %.0f to %.0f V", battery.capacityAh(), battery.leastHours(), battery.supplyFromV(),
                battery.supplyToV())}));
        html.element("h2 class=\"flow\"", "Numbers").facts(facts);
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
                "Check supply and lamps, switch on, and read the colours from below, on and above the slope.",
                "Measure the angle again after warming up, and whenever the unit was touched or the ground is soft.")
                .forEach(step -> html.element("li", step));
        html.close("ol");
    }

    private void sight() {
        html.element("h2 class=\"flow\"", "Sight line").table("data", List.of(34, 16, 20, 30), List.of("Line", "Angle", "Clear by",
                "Closest obstacle"));
        for (SightLine line : found.sight().lines()) {
            html.row("td", List.of(line.name(), Angles.format(line.angleDeg()), line.marginM().isEmpty() ? "-"
                    : String.format(Locale.ROOT, "%.2f m%s", line.marginM().getAsDouble(), line.isClear() ? "" : "  BLOCKED"),
                    line.obstacle()
                            .isEmpty() ? "none in the sector" : line.obstacle()));
        }
        html.endTable();
        Optional<String> curvature = found.sight().governing().map(SightLine::curvatureStatement);
        curvature.ifPresent(text -> html.element("p class=\"small\"", "The governing line: " + text + "."));
    }

    private void tilt() {
        LevellingEffect effect = found.levelling();
        html.element("h2 class=\"flow\"", String.format(Locale.ROOT, "If the unit is tilted by %.0f'", effect.minutes()));
        html.table("numbers", List.of(25, 25, 25, 25), List.of("Distance m", "Path m", "Tilted down m", "Tilted up m"));
        effect.heights().forEach(height -> html.row("td", List.of(String.format(Locale.ROOT, "%.0f", height.distanceM()), Numbers.two(height
                .heightM()), "-" + Numbers.two(height.downM()), "+" + Numbers.two(height.upM()))));
        html.endTable();
    }

    private void remarks() {
        List<String> remarks = new ArrayList<>(found.notes());
        if (!found.toConfirm().isEmpty()) {
            remarks.add("To be confirmed against the issued documents: " + String.join(", ", found.toConfirm().stream()
                    .map(citation -> citation.key()).distinct().toList()) + ".");
        }
        if (!remarks.isEmpty()) {
            html.element("h2 class=\"flow\"", "Remarks").open("div class=\"remarks\"").list(remarks).close("div");
        }
    }
}
