package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/** Puts the commissioning sheet of an indicator together as XHTML. */
public final class CommissioningDocument {

    private static final List<String[]> TOLERANCES = List.of(new String[] {"setting-accuracy-min", "Setting of the angle"},
            new String[] {"reset-beyond-min", "Set again beyond"}, new String[] {"sector-accuracy-min", "Edges of the sectors"},
            new String[] {"azimuth-tolerance-deg", "Azimuth"}, new String[] {"level-difference-m", "Level between lenses"},
            new String[] {"lateral-gradient-percent", "Gradient of the row"},
            new String[] {"inner-unit-to-edge-tolerance-m", "Inner unit to the runway edge"},
            new String[] {"inner-unit-to-edge-tolerance-ft", "Inner unit to the runway edge"},
            new String[] {"unit-spacing-tolerance-m", "Spacing of units"}, new String[] {"bar-square-tolerance-m",
            "Row square to the axis"});
    private static final double[] STAFF_M = {5, 10, 20, 30};

    private final Html html = new Html();
    private final AidEvaluation subject;
    private final Siting siting;
    private final AsBuilt built;

    private CommissioningDocument(AidEvaluation subject, AsBuilt built) {
        this.subject = subject;
        this.built = built;
        siting = subject.siting().value().orElseThrow(() -> new SitingException(subject.siting().reason().map(Message::english).orElse("")));
    }

    /** Writes the sheet of an aid whose layout could be worked out. */
    public static String write(Project project, AidEvaluation subject, ReportOptions options) throws ReportException {
        return new CommissioningDocument(subject, AsBuilt.of(subject)).writeAll(project, options);
    }

    private String writeAll(Project project, ReportOptions options) throws ReportException {
        String label = Projects.path(subject.aid());
        html.element("h1", "Commissioning sheet").element("p class=\"lead\"", label);
        String eye = subject.host() instanceof RunwayEnd ? "Eye height over the threshold (MEHT)" : "Eye height at the hover point";
        html.facts(List.of(new String[] {"Type", subject.family().map(family -> family.name()).orElse("unknown")},
                new String[] {"Rule set", OutcomeTables.ruleSet(subject.rules())},
                new String[] {"Approach slope", Numbers.angle(siting.slopeDeg())},
                new String[] {"Distance", Numbers.metresAndFeet(siting.distanceM())},
                new String[] {eye, Numbers.metresAndFeet(siting.mehtM())}));
        Shell.cautions(html);
        tolerances();
        angles();
        places();
        staff();
        AsBuiltSection results = new AsBuiltSection(html, subject.host(), subject.rules(), built);
        results.results();
        results.flights();
        results.certificate();
        return new Shell(project, options, OutcomeTables.ruleSet(subject.rules())).document("Commissioning: " + label, "report",
                html.toString());
    }

    private Optional<CitedValue> value(String name) {
        return subject.rules().find(siting.family() + "." + name);
    }

    private void tolerances() {
        html.element("h2 class=\"flow\"", "Tolerances of the rule set").table("fine", List.of(28, 16, 56), List.of("What", "Tolerance",
                "Source and provenance"));
        for (String[] tolerance : TOLERANCES) {
            value(tolerance[0]).ifPresent(value -> html.row("td", List.of(tolerance[1], Numbers.plain(value.value()) + " " + value.unit(),
                    OutcomeTables.source(value.citation()) + (value.citation().toConfirm() ? ", to be confirmed" : ""))));
        }
        html.endTable();
    }

    private Optional<MeasuredUnit> measured(String unit) {
        return subject.aid().getUnits().stream().filter(one -> unit.equals(one.getLabel())).findFirst().map(LightUnit::getMeasured);
    }

    private void angles() {
        html.element("h2 class=\"flow\"", "Angles").table("numbers write", List.of(9, 15, 15, 12, 27, 22), List.of("Unit", "Set to",
                "Measured", "Off by min", "Setting again", "Person, date, instrument"));
        for (AsBuilt.Unit unit : built.units()) {
            List<String> cells = new ArrayList<>(List.of(unit.id(), Angles.format(unit.settingDeg())));
            if (unit.measuredDeg().isEmpty()) {
                cells.addAll(List.of("", "", "", ""));
            } else {
                cells.addAll(List.of(Angles.format(unit.measuredDeg().getAsDouble()), String.format(Locale.ROOT, "%+.1f", unit.offMin()
                        .getAsDouble()), unit.advice().map(Message::english).orElse(""),
                        measured(unit.id()).map(CommissioningDocument::who).orElse("")));
            }
            html.row("td", cells);
        }
        html.endTable();
    }

    private static String who(MeasuredUnit unit) {
        return Numbers.orUnknown(unit.getPerson()) + ", " + Numbers.orUnknown(unit.getDate()) + ", " + Numbers.orUnknown(unit
                .getInstrument());
    }

    private void places() {
        html.element("h2 class=\"flow\"", "Places and levels").table("numbers write", List.of(10, 15, 15, 15, 15, 15, 15), List.of("Unit",
                "Along m", "measured", "Right m", "measured", "Lens elevation m", "measured"));
        double datum = subject.frame().value().map(frame -> frame.originElevationM()).orElse(Double.NaN);
        for (UnitPlan unit : siting.units()) {
            Optional<MeasuredUnit> found = measured(unit.id());
            html.row("td", List.of(unit.id(), Numbers.two(unit.place().alongM()),
                    found.map(MeasuredUnit::getAlongM).map(Numbers::two).orElse(
                    ""), Numbers.two(unit.place().rightM()), found.map(MeasuredUnit::getRightM).map(Numbers::two).orElse(""),
                    Double.isNaN(datum) ? "not known" : Numbers.two(unit.place().heightM() + datum),
                    found.map(MeasuredUnit::getLensElevationM).map(Numbers::two).orElse("")));
        }
        html.endTable();
    }

    private void staff() {
        List<String> head = new ArrayList<>(List.of("Unit", "Gradient m/m"));
        for (double distance : STAFF_M) {
            head.add(String.format(Locale.ROOT, "at %.0f m", distance));
        }
        html.element("h2 class=\"flow\"", "Height of the setting on a staff, metres above the lens").table("numbers", List.of(15, 17,
                17, 17,
                17, 17), head);
        for (UnitPlan unit : siting.units()) {
            List<String> cells = new ArrayList<>(List.of(unit.id(), String.format(Locale.ROOT, "%.5f", Angles.tanDeg(unit.settingDeg()))));
            for (double distance : STAFF_M) {
                cells.add(String.format(Locale.ROOT, "%.3f", distance * Angles.tanDeg(unit.settingDeg())));
            }
            html.row("td", cells);
        }
        html.endTable();
    }
}
