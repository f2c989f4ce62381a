package slopewright.report.internal.card;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.drawing.hand.HandScenes;
import slopewright.drawing.scene.Scene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.portable.AzimuthPlate;
import slopewright.evaluation.portable.DeckMotion;
import slopewright.evaluation.portable.HandUnit;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.evaluation.portable.SlopeScale;
import slopewright.messages.Argument;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.HandOrder;
import slopewright.model.MagneticVariation;
import slopewright.model.ObstacleSurvey;
import slopewright.model.RunwayEnd;
import slopewright.model.SightHair;
import slopewright.report.CardPaper;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.SectorEdge;
import slopewright.siting.UnitPlan;

/**
 * The steps of a set-up, one a line, for a hand in a glove at night: a box to tick, a picture, a few words and a value. They come in the
 * order of the unit in hand. Behind them: when to look again, how long the card holds, and who set the unit up.
 */
final class FieldSteps {
    /** A magnetic variation that has changed by more than this is another, decimal degrees. */
    private static final double VARIATION_CHANGE_DEG = 0.5;
    private static final double DAYS_A_YEAR = 365.25;
    private static final int CHECKS = 4;
    private static final String TIMES = "<table class=\"times\"><colgroup><col style=\"width:30%\" /><col /><col /><col />"
            + "<col /></colgroup><tbody>";
    private static final double FULL_DEG = 360;

    private final Html html;
    private final ReportWords words;
    private final AidEvaluation aid;
    private final PortableSetUp found;
    private final CardPaper paper;
    private final EquipmentType type;
    private final boolean atRunway;

    FieldSteps(Html html, AidEvaluation aid, PortableSetUp found, CardPaper paper) {
        this.html = html;
        this.aid = aid;
        this.found = found;
        this.paper = paper;
        words = html.words();
        type = aid.aid().getEquipment();
        atRunway = aid.host() instanceof RunwayEnd;
    }

    void write(Pictures pictures) {
        html.raw("<table class=\"steps\"><colgroup><col style=\"width:" + (paper == CardPaper.A5 ? 9 : 7) + "%\" /><col style=\"width:"
                + (paper == CardPaper.A5 ? 23 : 17) + "%\" /><col /></colgroup><tbody>");
        step(pictures, HandScenes.power(say("agree"), false), say("agree"), List.of(), "");
        step(pictures, HandScenes.walk(say(walk()), found.hands(), found.azimuth().landingMagneticDeg(), atRunway ? "T" : "H"), say(walk()),
                values(hand -> bearing(hand.walkMagneticDeg()) + "\u2002"
                        + words.write(Words.dm(hand.walkM())).replace(' ', '\u00a0')), "");
        order().forEach(name -> handle(pictures, name));
        step(pictures, HandScenes.sight(say("sight")), say("sight"), List.of(), hairs());
        String battery = found.battery().map(power -> say("battery", Words.number(Math.round(power.supplyFromV())),
                Words.number(Math.round(power.supplyToV())))).orElse(say("battery-alone"));
        step(pictures, HandScenes.battery(battery), battery,
                found.battery().map(power -> new Value("", words.fixed(power.leastHours(), 1) + "\u00a0h")).stream().toList(), levels());
        step(pictures, HandScenes.lights(say("on"), lights()), say("on"), List.of(), say("read"));
        html.raw("</tbody></table>\n");
        deck().ifPresent(text -> html.element("p class=\"hold\"", text));
        again();
        holds();
    }

    /** What the motion of the deck leaves of the sectors of the first unit; empty where nothing moves. */
    private Optional<String> deck() {
        return DeckMotion.of(aid.host(), type).map(motion -> {
            List<Argument> left = motion.left(found.siting().units().get(0)).stream().map(sector -> (Argument) Words.name(say("sector-left",
                    Words.name(name(sector.light())), Words.min(sector.leftMin()), Words.min(sector.widthMin())))).toList();
            return say(motion.held() ? "deck-held" : "deck-moves", Words.min(motion.tiltMin()), Words.degrees(motion.swingDeg()),
                    Words.list(left));
        });
    }

    private String walk() {
        return atRunway ? "walk-runway" : "walk";
    }

    /** Returns what is turned, levelled and set, in the order of the unit in hand. */
    private List<String> order() {
        HandOrder order = type == null || type.getHandOrder() == HandOrder.NOT_STATED ? HandOrder.LEVEL_TURN_SET : type.getHandOrder();
        return List.of(order.name().split("_"));
    }

    private void handle(Pictures pictures, String name) {
        Optional<AzimuthPlate> plate = AzimuthPlate.of(type);
        Optional<SlopeScale> scale = SlopeScale.of(type);
        HandUnit first = found.hands().get(0);
        switch (name) {
            case "TURN" -> {
                String text = plate.map(described -> say("turn", Words.name(bearing(first.plate().orElseThrow().zeroMagneticDeg()))))
                        .orElse(say("turn-by-compass"));
                step(pictures, plate.map(described -> HandScenes.plate(text, described, first.plate().orElseThrow()))
                        .orElse(HandScenes.level(text)), text,
                        values(hand -> hand.plate().map(reading -> mark(reading.markDeg(), type.getPlateStepDeg())).orElse(bearing(hand
                                .beamMagneticDeg()))), say("beam-to", Words.name(bearing(first
                                        .beamMagneticDeg()))));
            }
            case "LEVEL" -> step(pictures, HandScenes.level(say("level")), say("level"), List.of(), "");
            default -> step(pictures, scale.map(described -> HandScenes.slope(say("set"), described, first.slope().orElseThrow()))
                    .orElse(HandScenes.level(say("set"))), say("set"), values(hand -> hand.slope().map(mark -> mark(mark.markDeg(), type
                            .getSlopeScaleStepDeg())).orElse(words.minutes(hand.unit().settingDeg()))), "");
        }
    }

    /** Returns the value of every unit with its name; one without where all have the same. */
    private List<Value> values(Function<HandUnit, String> value) {
        List<Value> all = found.hands().stream().map(hand -> new Value(hand.unit().id(), value.apply(hand))).toList();
        return all.stream().map(Value::text).distinct().count() == 1 ? List.of(new Value("", all.get(0).text())) : all;
    }

    /** What the hand sets, and at which unit; the name is empty where it is every one. */
    private record Value(String unit, String text) {
    }

    private void step(Pictures pictures, Scene picture, String text, List<Value> values, String small) {
        html.raw("<tr><td><div class=\"tick\"></div></td><td>").raw(pictures.add(picture, paper.pictureMm(), paper.pictureMm()))
                .raw("</td><td>").element("p class=\"step\"", text);
        for (Value value : values) {
            html.open("p class=\"value\"");
            if (!value.unit().isEmpty()) {
                html.element("span", value.unit()).text("\u2002");
            }
            html.text(value.text()).close("p");
        }
        if (!small.isEmpty()) {
            html.element("p class=\"hint\"", small);
        }
        html.raw("</td></tr>\n");
    }

    private String hairs() {
        return type == null ? "" : Stream.of("lower", "upper").map(hair -> {
            SightHair edge = "lower".equals(hair) ? type.getLowerHair() : type.getUpperHair();
            return edge == SightHair.NOT_STATED ? "" : say(hair + "-hair", Words.term("report.hair." + edge.name().toLowerCase(Locale.ROOT)
                    .replace('_', '-')));
        }).filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    }

    private String levels() {
        return found.battery().map(battery -> battery.levels().stream().map(level -> say("at-step", Words.count(level.step()), Words.name(
                words.fixed(level.hours(), 1)))).collect(Collectors.joining(", "))).orElse("");
    }

    /** Returns what the first unit shows, the lowest first. */
    private List<String> lights() {
        UnitPlan unit = found.siting().units().get(0);
        List<String> names = new ArrayList<>();
        if (unit.edges().isEmpty()) {
            return List.of(words.say("card.no-sectors"));
        }
        names.add(name(unit.edges().get(0).below()));
        unit.edges().stream().map(SectorEdge::above).map(this::name).forEach(names::add);
        return names;
    }

    private String name(Light light) {
        return light.form() == LightForm.OFF ? words.term("light.off") : light.form() == LightForm.STEADY
                ? words.term("colour", light.colour())
                : words.say("card." + light.form().key(), Words.name(words.term("colour", light.colour())));
    }

    /** Boxes for the times at which bubble, lamp and battery were looked at again. */
    private void again() {
        Double every = type == null ? null : type.getRecheckEveryH();
        html.open("div class=\"again\"").element("p class=\"step\"", every == null ? say("again")
                : say("again-every", Words.name(words.plain(every)))).raw(TIMES);
        for (String what : List.of("bubble", "lamp", "battery")) {
            html.raw("<tr>").element("th scope=\"row\"", say("look-" + what));
            for (int i = 0; i < CHECKS; i++) {
                html.element("td", "");
            }
            html.raw("</tr>");
        }
        html.raw("</tbody></table>").close("div");
    }

    /** How long the card holds, and who set the unit up. */
    private void holds() {
        html.open("div class=\"holds\"").element("p class=\"hold\"", say("valid-on", Words.name(found.date().toString()),
                Words.name(words.signed(found.azimuth().variation().variationDeg(), 1)),
                Words.name(variationUntil().map(LocalDate::toString).orElse(say("not-known")))));
        html.element("p class=\"hold\"", say("obstacles-of", Words.name(surveyed().orElse(say("not-known")))));
        html.raw(TIMES);
        for (String role : List.of("set-up-by", "checked-by")) {
            html.raw("<tr>").element("th scope=\"row\"", words.say("role." + role)).element("td colspan=\"3\"", "")
                    .element("td class=\"clock\"", say("time")).raw("</tr>");
        }
        html.raw("</tbody></table>").close("div");
    }

    /** Returns the day on which the entered variation will have changed by half a degree; empty where no change is entered. */
    private Optional<LocalDate> variationUntil() {
        MagneticVariation entered = aid.project().getAerodrome() == null ? null : aid.project().getAerodrome().getMagneticVariation();
        if (entered == null || entered.getAnnualChangeDeg() == null || entered.getAnnualChangeDeg() == 0) {
            return Optional.empty();
        }
        double years = VARIATION_CHANGE_DEG / Math.abs(entered.getAnnualChangeDeg());
        return Optional.of(found.date().plus(Period.ofDays((int) (years * DAYS_A_YEAR))));
    }

    private Optional<String> surveyed() {
        return aid.project().getAerodrome() == null ? Optional.empty() : aid.project().getAerodrome().getObstacleSurveys().stream()
                .filter(survey -> survey.getHosts().contains(aid.host())).map(ObstacleSurvey::getDate).filter(Objects::nonNull)
                .min(Comparator.naturalOrder());
    }

    private String say(String key, Argument... arguments) {
        return words.say("card.field." + key, arguments);
    }

    private String mark(double value, double stepDeg) {
        return words.fixed(value, HandScenes.decimals(stepDeg)) + "\u00b0";
    }

    private static String bearing(double degrees) {
        return String.format(Locale.ROOT, "%03d\u00b0", Math.round(degrees) % (int) FULL_DEG);
    }
}
