package slopewright.report.internal.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.SetUpGate;
import slopewright.checks.Standing;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.RunwayEnd;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.html.Upkeep;
import slopewright.report.internal.template.PageFrame;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.CitedValue;

/** Puts the commissioning sheet of an indicator together as XHTML. */
public final class CommissioningDocument {

    /** Values of a rule set that a measuring party needs; each has a name in the catalogue. */
    private static final List<String> TOLERANCES = List.of("setting-accuracy-min", "reset-beyond-min", "sector-accuracy-min",
            "azimuth-tolerance-deg", "level-difference-m", "lateral-gradient-percent", "inner-unit-to-edge-tolerance-m",
            "inner-unit-to-edge-tolerance-ft", "unit-spacing-tolerance-m", "bar-square-tolerance-m");
    private static final double[] STAFF_M = {5, 10, 20, 30};

    private final ReportWords words;
    private final Html html;
    private final ProjectEvaluation evaluation;
    private final AidEvaluation aid;
    private final ReportOptions options;
    private final AsBuilt built;
    private final Siting siting;

    /**
     * Starts a sheet.
     *
     * @param evaluation the evaluation of the project
     * @param aid        that of an aid in it
     * @param options    date, paper, template and language
     * @throws slopewright.siting.SitingException where its layout cannot be worked out
     */
    public CommissioningDocument(ProjectEvaluation evaluation, AidEvaluation aid, ReportOptions options) {
        this.evaluation = evaluation;
        this.aid = aid;
        this.options = options;
        words = new ReportWords(options.renderer());
        html = new Html(words);
        built = AsBuilt.of(aid);
        siting = built.planned();
    }

    /** Returns its title. */
    public String title() {
        return words.say("commissioning.title-of", Words.name(words.path(aid.aid())));
    }

    /**
     * Writes the sheet.
     *
     * @return the document
     * @throws ReportException where the template holds what it may not hold
     */
    public String write() throws ReportException {
        String ruleSet = words.ruleSet(aid.rules());
        html.element("h1", words.say("commissioning.title")).element("p class=\"lead\"", words.path(aid.aid()));
        boolean runway = aid.host() instanceof RunwayEnd;
        Facts facts = html.newFacts().add("type", words.family(aid.family(), aid.aid().getFamilyKey())).add("rule-set", ruleSet)
                .add("approach-slope", words.angle(siting.slopeDeg()))
                .add(runway ? "distance-from-threshold" : "distance-from-hover", words.metresAndFeet(siting.distanceM()))
                .add(runway ? "meht" : "eye-height-at-hover", words.metresAndFeet(siting.mehtM()));
        siting.nominalEyeHeightM().ifPresent(nominal -> facts.add("nominal-eye-height", words.metresAndFeet(nominal)));
        html.facts(facts);
        verdict();
        PageFrame.cautions(html);
        SiteTests tests = new SiteTests(html, aid, siting);
        AsBuiltSection results = new AsBuiltSection(html, built);
        List<Runnable> parts = List.of(this::tolerances, tests::day, this::angles, this::places, this::staff, tests::units, tests::supply,
                this::upkeep, results::results);
        parts.forEach(this::whole);
        results.flights();
        results.certificate(SetUpGate.reasons(evaluation, aid));
        return new PageFrame(aid.project(), options, aid.rules()).document(title(), "report", html.toString());
    }

    /** Says how the indicator stands by the check, and the whole project; where nothing is measured yet nothing else would say it. */
    private void verdict() {
        CheckResult checked = Checks.run(evaluation, rule -> true);
        Standing standing = Standing.of(List.of(aid), checked);
        String style = switch (standing.verdict()) {
            case MET -> "clear";
            case NOT_MET -> "broken";
            default -> "open";
        };
        html.element("p class=\"locked verdict " + style + "\"", words.say("commissioning.verdict", standing.words(),
                Standing.of(checked).words()));
    }

    /** Adds a part that no page tears. */
    private void whole(Runnable part) {
        html.open("div class=\"keep\"");
        part.run();
        html.close("div");
    }

    private Optional<CitedValue> value(String name) {
        return aid.family().flatMap(family -> aid.rules().find(family.ruleKey() + "." + name));
    }

    private void tolerances() {
        html.part("rule-tolerances");
        if (TOLERANCES.stream().allMatch(name -> value(name).isEmpty())) {
            html.paragraph("no-tolerances");
            return;
        }
        html.table("fine", List.of(28, 16, 56), "what", "tolerance", "source-provenance");
        for (String name : TOLERANCES) {
            value(name).ifPresent(value -> html.row(List.of(words.say("tolerance." + name), words.plain(value.value())
                    + ReportWords.unit(value.unit()), words.sourceAndState(value.citation()))));
        }
        html.endTable();
    }

    private Optional<MeasuredUnit> measured(String unit) {
        return aid.aid().getUnits().stream().filter(candidate -> unit.equals(candidate.getLabel() == null ? candidate.getId()
                : candidate.getLabel())).findFirst().map(LightUnit::getMeasured);
    }

    private void angles() {
        html.part("angles").table("numbers write", List.of(9, 15, 15, 12, 27, 22), "unit", "set-to", "measured", "off-by", "setting-again",
                "person-date-instrument");
        List<String> persons = built.units().stream().filter(unit -> unit.measuredDeg().isPresent())
                .map(unit -> measured(unit.id()).map(this::who).orElse("")).distinct().toList();
        for (AsBuilt.Unit unit : built.units()) {
            List<String> cells = new ArrayList<>(List.of(unit.id(), words.minutes(unit.settingDeg())));
            if (unit.measuredDeg().isEmpty()) {
                cells.addAll(List.of("", "", "", ""));
            } else {
                cells.addAll(List.of(words.minutes(unit.measuredDeg().getAsDouble()), words.signed(unit.offMin().getAsDouble(), 1),
                        unit.advice().map(words::render).orElse(""),
                        persons.size() == 1 ? "" : measured(unit.id()).map(this::who).orElse("")));
            }
            html.row(cells);
        }
        html.endTable();
        if (persons.size() == 1) {
            html.remark("measured-by", Words.name(persons.get(0)));
        }
    }

    private String who(MeasuredUnit unit) {
        return words.orUnknown(unit.getPerson()) + ", " + words.orUnknown(unit.getDate()) + ", " + words.orUnknown(unit.getInstrument());
    }

    private void places() {
        html.part("places").table("numbers write", List.of(10, 15, 15, 15, 15, 15, 15), "unit", "along-m", "measured", "right-m",
                "measured",
                "lens-elevation-m", "measured");
        Optional<Double> datum = aid.frame().value().map(SiteFrame::originElevationM);
        for (UnitPlan unit : siting.units()) {
            Optional<MeasuredUnit> found = measured(unit.id());
            html.row(List.of(unit.id(), words.two(unit.place().alongM()), found.map(MeasuredUnit::getAlongM).map(words::two).orElse(""),
                    words.two(unit.place().rightM()), found.map(MeasuredUnit::getRightM).map(words::two).orElse(""),
                    datum.map(from -> words.two(from + unit.place().heightM())).orElse(words.term("not-known")),
                    found.map(MeasuredUnit::getLensElevationM).map(words::two).orElse("")));
        }
        html.endTable();
    }

    private void staff() {
        List<String> heads = new ArrayList<>(List.of(words.say("head.unit"), words.say("head.gradient")));
        DoubleStream.of(STAFF_M).forEach(distance -> heads.add(words.say("head.at", Words.name(words.fixed(distance, 0) + " m"))));
        html.part("staff").tableOf("numbers", List.of(15, 17, 17, 17, 17, 17), heads);
        for (UnitPlan unit : siting.units()) {
            double gradient = Angles.tanDeg(unit.settingDeg());
            List<String> cells = new ArrayList<>(List.of(unit.id(), words.fixed(gradient, 5)));
            DoubleStream.of(STAFF_M).forEach(distance -> cells.add(words.fixed(distance * gradient, 3)));
            html.row(cells);
        }
        html.endTable();
    }

    private void upkeep() {
        if (Upkeep.concerns(aid)) {
            html.part("upkeep");
            new Upkeep(html).write(List.of(aid));
        }
    }
}
