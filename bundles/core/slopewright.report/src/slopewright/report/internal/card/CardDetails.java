package slopewright.report.internal.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.portable.AzimuthPlate;
import slopewright.evaluation.portable.HandUnit;
import slopewright.evaluation.portable.LevellingEffect;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.evaluation.portable.SightLine;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;

/** What stands behind the steps of a set-up card: the numbers, the sight lines, what a tilt does, and remarks. */
final class CardDetails {

    private static final double PICTURE_WIDTH_MM = 90;
    private static final double PICTURE_HEIGHT_MM = 27;
    private static final double ON_CENTRE_LINE_M = 0.005;
    /** Distances of the table of tilts that fit on the card, metres. */
    private static final List<Double> TILT_AT_M = List.of(100.0, 1000.0, 2000.0);

    private final Html html;
    private final ReportWords words;
    private final AidEvaluation aid;
    private final PortableSetUp found;
    private final boolean atRunway;

    CardDetails(Html html, AidEvaluation aid, PortableSetUp found) {
        this.html = html;
        this.aid = aid;
        this.found = found;
        words = html.words();
        atRunway = aid.host() instanceof RunwayEnd;
    }

    void write(Pictures pictures) {
        strip();
        numbers();
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
    }

    /** The numbers that the hands need of every unit, as they are computed. */
    private void strip() {
        html.tableOf("strip", List.of(10, 28, 30, 32), Stream.of("unit", "set-to", "turn-to", "stand-at")
                .map(head -> words.say("head." + head)).toList());
        for (HandUnit hand : found.hands()) {
            UnitPlan unit = hand.unit();
            double alongM = unit.place().alongM();
            html.row(List.of(unit.id(), words.minutes(unit.settingDeg()) + "  =  " + words.fixed(unit.settingDeg(), 3) + "\u00b0",
                    words.say("card.compass", Words.name(words.fixed(hand.beamMagneticDeg(), 1)), Words.name(words.fixed(hand
                            .beamTrueDeg(), 1))),
                    words.say("card.stand." + (alongM < 0 ? "before" : "past") + (atRunway ? "-threshold" : "-hover"), Words.m(Math.abs(
                            alongM)), side(unit.place().rightM()))));
        }
        html.endTable();
    }

    private void numbers() {
        Siting siting = found.siting();
        SiteFrame frame = aid.frame().orThrow();
        Facts facts = html.newFacts().add("rule-set", words.ruleSet(aid.rules()))
                .add("approach-slope", words.angle(siting.slopeDeg()) + found.descent().map(descent -> "; " + words.say("card.from-descent",
                        descent.message())).orElse(""));
        AzimuthPlate.of(aid.aid().getEquipment()).ifPresent(plate -> facts.add("azimuth-plate", words.render(plate.message())));
        for (UnitPlan unit : siting.units()) {
            facts.add("lens", named(unit, words.say(atRunway ? "card.lens-runway" : "card.lens-helipad", Words.m(unit.place().heightM()),
                    Words.m(unit.place().heightM() + frame.originElevationM())) + frame.latLon(unit.place()).map(place -> "; " + words.say(
                            "card.lat-lon", Words.name(words.fixed(place.latitudeDeg(), 6)), Words.name(words.fixed(place.longitudeDeg(),
                                    6)))).orElse("")));
        }
        facts.add("magnetic-variation", words.signed(found.azimuth().variation().variationDeg(), 2) + "\u00b0 ("
                + found.azimuth().variation().source() + ")");
        siting.units().forEach(unit -> facts.add("sectors", named(unit, sectors(unit))));
        html.part("numbers").facts(facts, 18);
    }

    private String named(UnitPlan unit, String text) {
        return found.hands().size() == 1 ? text : unit.id() + ": " + text;
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
        return line.isClear() && found.sight().surveyed() ? name : name + ", "
                + (line.isBlocked() ? words.say("card.blocked") : words.term("to-clear-up"));
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
            remarks.add(words.say("card.to-confirm", Words.list(found.toConfirm().stream().map(Citation::text).distinct().toList())));
        }
        if (!remarks.isEmpty()) {
            html.part("remarks").open("div class=\"remarks\"").list(remarks).close("div");
        }
    }
}
