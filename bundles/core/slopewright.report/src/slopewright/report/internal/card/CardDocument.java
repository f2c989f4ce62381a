package slopewright.report.internal.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.portable.LevellingEffect;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.evaluation.portable.SightLine;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.report.PaperSize;
import slopewright.report.ReportException;
import slopewright.report.ReportOptions;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.report.internal.template.PageFrame;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;

/** Puts the set-up card of a portable unit together as XHTML. */
public final class CardDocument {

    private static final double PICTURE_WIDTH_MM = 90;
    private static final double PICTURE_HEIGHT_MM = 27;
    private static final double ON_CENTRE_LINE_M = 0.005;
    /** Distances of the table of tilts that fit on the card, metres. */
    private static final List<Double> TILT_AT_M = List.of(100.0, 1000.0, 2000.0);

    private final Html html;
    private final ReportWords words;
    private final AidEvaluation aid;
    private final PortableSetUp found;
    private final List<Message> reasons;
    private final ReportOptions options;
    private final boolean atRunway;

    /**
     * Starts a card.
     *
     * @param aid     the evaluation of the aid
     * @param found   its set-up
     * @param reasons what stands against its use
     * @param options date, paper, template and language
     */
    public CardDocument(AidEvaluation aid, PortableSetUp found, List<Message> reasons, ReportOptions options) {
        this.aid = aid;
        this.found = found;
        this.reasons = List.copyOf(reasons);
        this.options = options;
        words = new ReportWords(options.language());
        html = new Html(words);
        atRunway = aid.host() instanceof RunwayEnd;
    }

    /** Returns its title. */
    public String title() {
        return words.say("card.title-of", Words.name(found.label()));
    }

    /**
     * Writes the card.
     *
     * @param pictures takes its drawing
     * @return the document
     * @throws ReportException where the template holds what it may not hold
     */
    public String write(Pictures pictures) throws ReportException {
        stop();
        html.element("h1", words.say("card.title"))
                .element("p class=\"big\"", words.say("card.label", Words.name(found.label()), Words.name(found.date().toString())));
        PageFrame.cautions(html);
        strip();
        numbers();
        steps();
        sight();
        boolean chart = SignalScene.fits(found.siting());
        if (chart) {
            html.raw("<table class=\"pair\"><colgroup><col style=\"width:53%\" /><col style=\"width:47%\" /></colgroup><tbody><tr><td>");
            html.part("signals").raw(pictures.add(SignalScene.of(DrawnAid.laidOut(aid, words.renderer())), PICTURE_WIDTH_MM,
                    PICTURE_HEIGHT_MM)).raw("</td><td>");
        }
        tilt();
        if (chart) {
            html.raw("</td></tr></tbody></table>\n");
        }
        remarks();
        signatures();
        return new PageFrame(aid.project(), options, words.ruleSet(aid.rules())).document(title(),
                isDense() ? "card short" : "card", html.toString());
    }

    /** A card that is not for use is not signed. */
    private void signatures() {
        if (reasons.isEmpty()) {
            html.open("div class=\"signatures\"").table("sign", List.of(20, 35, 15, 30), "part", "name", "date-and-time", "signature");
            Stream.of("set-up-by", "checked-by").forEach(role -> html.row(List.of(words.say("role." + role), "", "", "")));
            html.endTable().close("div");
        }
    }

    /** Returns whether the card is set more closely: on the shorter paper, and in a language of longer words. */
    private boolean isDense() {
        return options.paper() == PaperSize.LETTER || !words.language().equals(Locale.ENGLISH.getLanguage());
    }

    private void stop() {
        if (!reasons.isEmpty()) {
            html.open("div class=\"locked stop\"").element("p class=\"stop-word\"", words.say("card.not-for-use"))
                    .list(words.render(reasons)).close("div");
        }
    }

    /** The three numbers that the hands need, so large that they are read at arm's length. */
    private void strip() {
        UnitPlan unit = found.siting().units().get(0);
        html.tableOf("strip", List.of(34, 33, 33), Stream.of("set-to", "turn-to", "stand-at").map(head -> words.say("head." + head))
                .toList());
        double alongM = unit.place().alongM();
        html.row(List.of(words.minutes(unit.settingDeg()) + "  =  " + words.fixed(unit.settingDeg(), 3) + "\u00b0",
                words.say("card.compass", Words.name(words.fixed(found.azimuth().beamMagneticDeg(), 1)), Words.name(words.fixed(found
                        .azimuth().beamTrueDeg(), 1))),
                words.say("card.stand." + (alongM < 0 ? "before" : "past") + (atRunway ? "-threshold" : "-hover"), Words.m(Math.abs(
                        alongM)), side(unit.place().rightM())))).endTable();
    }

    private void numbers() {
        Siting siting = found.siting();
        UnitPlan unit = siting.units().get(0);
        SiteFrame frame = aid.frame().orThrow();
        Facts facts = html.newFacts().add("rule-set", words.ruleSet(aid.rules()))
                .add("approach-slope", words.angle(siting.slopeDeg()) + found.descent().map(descent -> "; " + words.say("card.from-descent",
                        descent.message())).orElse(""))
                .add("lens", words.say(atRunway ? "card.lens-runway" : "card.lens-helipad", Words.m(unit.place().heightM()), Words.m(unit
                        .place().heightM() + frame.originElevationM())) + frame.latLon(unit.place()).map(place -> "; " + words.say(
                                "card.lat-lon", Words.name(words.fixed(place.latitudeDeg(), 6)), Words.name(words.fixed(place
                                        .longitudeDeg(), 6)))).orElse(""))
                .add("magnetic-variation", words.signed(found.azimuth().variation().variationDeg(), 2) + "\u00b0 ("
                        + found.azimuth().variation().source() + ")")
                .add("sectors", sectors(unit));
        html.part("numbers").facts(facts, 18);
    }

    private Message side(double rightM) {
        return Math.abs(rightM) < ON_CENTRE_LINE_M ? Message.of("report.card.on-centre-line")
                : Message.of(rightM < 0 ? "report.card.left-of" : "report.card.right-of", Words.m(Math.abs(rightM)));
    }

    private String sectors(UnitPlan unit) {
        if (unit.edges().isEmpty()) {
            return words.say("card.no-sectors");
        }
        StringBuilder text = new StringBuilder(word(unit.edges().get(0).below()));
        for (SectorEdge edge : unit.edges()) {
            text.append(" | ").append(words.minutes(edge.angleDeg())).append(" | ").append(word(edge.above()));
        }
        return text.toString();
    }

    private String word(Light light) {
        return light.form() == LightForm.OFF ? words.term("light.off") : light.form() == LightForm.STEADY
                ? words.term("colour", light.colour())
                : words.say("card." + light.form().key(), Words.name(words.term("colour", light.colour())));
    }

    private void steps() {
        UnitPlan unit = found.siting().units().get(0);
        html.part("steps").open("ol");
        Stream.of(words.say("card.step.authorisation"), words.say("card.step.place"),
                words.say("card.step.turn", Words.name(words.fixed(found.azimuth().beamMagneticDeg(), 1))),
                words.say("card.step.level", Words.deg(unit.settingDeg())), words.say("card.step.walk"),
                battery() + " " + words.say("card.step.switch-on"), words.say("card.step.again"))
                .forEach(step -> html.element("li", step));
        html.close("ol");
    }

    private String battery() {
        return found.battery().map(battery -> words.say("card.step.battery", Words.number(Math.round(battery
                .supplyFromV())), Words.number(Math.round(battery.supplyToV())), Words.number(Math.round(battery.capacityAh())),
                Words.name(words.fixed(battery.leastHours(), 1)))).orElse(words.say("card.step.supply"));
    }

    private void sight() {
        html.part("sight-line").table("data", List.of(50, 12, 16, 22), "line", "angle", "clear-by", "closest-obstacle");
        for (SightLine line : found.sight().lines()) {
            html.row(List.of(words.render(line.kind().message()), words.minutes(line.angleDeg()), line.lowestMarginM().isEmpty() ? "-"
                    : words.metres(line.lowestMarginM().getAsDouble()), closest(line)));
        }
        html.endTable();
    }

    private String closest(SightLine line) {
        String name = line.obstacle().isEmpty() ? words.say("card.nothing-in-sector") : line.obstacle();
        return line.isClear() ? name : name + ", " + (line.isBlocked() ? words.say("card.blocked") : words.term("to-clear-up"));
    }

    private void tilt() {
        LevellingEffect effect = found.levelling();
        html.part("tilt", Words.min(effect.minutes())).table("numbers", List.of(25, 25, 25, 25), "distance-m", "path-m", "tilted-down-m",
                "tilted-up-m");
        effect.heights().stream().filter(height -> TILT_AT_M.contains(height.distanceM())).forEach(height -> html.row(List.of(words.fixed(
                height.distanceM(), 0), words.two(height.heightM()), words.signed(-height.downM(), 2), words.signed(height.upM(), 2))));
        html.endTable();
    }

    private void remarks() {
        List<String> remarks = new ArrayList<>(words.render(found.notes()));
        found.sight().governing().map(SightLine::curvature).ifPresent(text -> remarks.add(words.say("card.governing-line", text)));
        if (!found.toConfirm().isEmpty()) {
            remarks.add(words.say("card.to-confirm", Words.names(found.toConfirm().stream().map(Citation::key).distinct().toList())));
        }
        if (!remarks.isEmpty()) {
            html.part("remarks").open("div class=\"remarks\"").list(remarks).close("div");
        }
    }
}
