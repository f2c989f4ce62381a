package slopewright.exchange.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.exchange.sheet.SheetWords;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.Siting;
import slopewright.siting.site.SiteFrame;

/**
 * The data of each aid that are published for an aerodrome.
 *
 * @param aids the aids, in the order of the project
 */
public record PublishedData(List<PublishedAid> aids) {

    /**
     * What is published of one aid. Null where a number is not known.
     *
     * @param aid                the aid
     * @param angleDeg           the nominal angle of the slope, decimal degrees
     * @param mehtM              minimum eye height over the threshold (MEHT), metres; null at a helipad, which has no threshold
     * @param hoverEyeHeightM    minimum eye height over the hover point of a helipad, metres; null at a runway
     * @param nominalEyeHeightM  eye height there on the slope itself, metres, where the family or place has one beside the minimum
     * @param onAngleDeg         the angle that the minimum eye height holds for, decimal degrees
     * @param distanceM          distance of the row or bar from the threshold or hover point, metres
     * @param displacedM         by how much the threshold is displaced, metres
     * @param place              where its units stand, in the middle; empty where that is not known
     * @param axisTurnDeg        turn of the axis from the approach direction, decimal degrees, clockwise
     */
    public record PublishedAid(AidEvaluation aid, Double angleDeg, Double mehtM, Double hoverEyeHeightM, Double nominalEyeHeightM,
            Double onAngleDeg, Double distanceM, Double displacedM, Optional<SiteFrame.LatLon> place, double axisTurnDeg) {

        /** Returns whether it serves a runway; a helipad has no threshold. */
        public boolean isAtRunway() {
            return aid.host() instanceof RunwayEnd;
        }

        /** Returns the latitude of its units in the form in which it is published, {@code 471759.63N}; empty where it is not known. */
        public Optional<String> latitude() {
            return place.map(at -> published(at.latitudeDeg(), 2, 'N', 'S'));
        }

        /** Returns the longitude of its units in the form in which it is published, {@code 0115344.19W}; empty where it is not known. */
        public Optional<String> longitude() {
            return place.map(at -> published(at.longitudeDeg(), 3, 'E', 'W'));
        }

        /**
         * Returns it in the words of an aeronautical information publication: what is not known says so and is never left out.
         *
         * @param renderer the language
         */
        public String wording(MessageRenderer renderer) {
            List<String> parts = new ArrayList<>(List.of(renderer.write(type()), renderer.write(side()), renderer.render(angleDeg == null
                    ? Message.of("sheet.wording.no-angle") : Message.of("sheet.wording.angle", fixed(renderer, angleDeg, 2)))));
            if (isAtRunway()) {
                parts.add(renderer.render(mehtM == null ? Message.of("sheet.wording.no-meht") : Message.of("sheet.wording.meht",
                        Words.m(mehtM),
                        Words.name(renderer.fixed(Lengths.metresToFeet(mehtM), 0) + " ft"))));
            }
            if (displacedM != null && displacedM > 0) {
                parts.add(renderer.render(Message.of("sheet.wording.displaced", fixed(renderer, displacedM, 0))));
            }
            if (axisTurnDeg != 0) {
                parts.add(renderer.render(Message.of(axisTurnDeg > 0 ? "sheet.wording.turned-clockwise"
                        : "sheet.wording.turned-counter-clockwise", fixed(renderer, Math.abs(axisTurnDeg), 2))));
            }
            return String.join(", ", parts);
        }

        private static Argument fixed(MessageRenderer renderer, double value, int decimals) {
            return Words.name(renderer.fixed(value, decimals));
        }

        private Argument type() {
            return aid.family().<Argument>map(Families::name).orElseGet(() -> Words.term("sheet.unknown-type"));
        }

        private Argument side() {
            return Words.term("report.side." + aid.aid().getSide().getName().toLowerCase(Locale.ROOT));
        }
    }

    /** Copies the list. */
    public PublishedData {
        aids = List.copyOf(aids);
    }

    /** Makes the data of a project. */
    public static PublishedData of(ProjectEvaluation evaluation) {
        return new PublishedData(evaluation.aids().stream().map(PublishedData::aid).toList());
    }

    private static PublishedAid aid(AidEvaluation aid) {
        Optional<Siting> siting = aid.siting().value();
        boolean atRunway = aid.host() instanceof RunwayEnd;
        Optional<OnSlopeBound> published = aid.published().map(AidEvaluation.PublishedHeight::bound);
        Double eyeHeight = published.map(OnSlopeBound::heightM).or(() -> siting.map(Siting::mehtM)).orElse(null);
        Double nominal = siting.isPresent() && siting.get().nominalEyeHeightM().isPresent()
                ? Double.valueOf(siting.get().nominalEyeHeightM().getAsDouble()) : null;
        Double displaced = aid.host() instanceof RunwayEnd end ? end.getDisplacedThresholdM() : null;
        return new PublishedAid(aid, siting.map(Siting::slopeDeg).orElse(aid.aid().getSlopeDeg()), atRunway ? eyeHeight : null,
                atRunway ? null : eyeHeight, nominal, published.map(OnSlopeBound::angleDeg).or(() -> siting.map(
                        Siting::lowestOnSlopeDeg)).orElse(null),
                siting.map(Siting::distanceM).orElse(null), displaced, siting.flatMap(found -> place(aid, found)),
                aid.aid().getAxisTurnDeg() == null ? 0 : aid.aid().getAxisTurnDeg());
    }

    private static Optional<SiteFrame.LatLon> place(AidEvaluation aid, Siting siting) {
        double along = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).average().orElse(0);
        double right = siting.units().stream().mapToDouble(unit -> unit.place().rightM()).average().orElse(0);
        return aid.frame().value().flatMap(frame -> frame.latLon(new FramePoint(along, right, 0)));
    }

    /** Returns what was taken off a setting for the height that is published, and after which source; nothing where nothing was. */
    public List<Message> taken() {
        return aids.stream().flatMap(line -> line.aid.published().stream()).map(AidEvaluation.PublishedHeight::taken)
                .map(taken -> Message.of("sheet.publish.taken", Words.quantity(taken.printed(), Notation.EXACT),
                        Words.name(taken.printedUnit()), taken.citation().text())).distinct().toList();
    }

    /** Returns the data as a table in a language. */
    public Sheet sheet(MessageRenderer renderer) {
        SheetWords words = new SheetWords(renderer);
        List<Message> notes = new ArrayList<>(List.of(Message.of("sheet.publish.meht"), Message.of("sheet.publish.nominal"),
                Message.of("sheet.publish.place"), Message.of("sheet.publish.design-aid")));
        notes.addAll(taken());
        aids.forEach(line -> line.aid.siting().reason().ifPresent(reason -> notes.add(Message.of("sheet.publish.reason",
                ElementNames.of(line.aid.aid()), reason))));
        return new Sheet(words.text(Message.of("sheet.publish.title")), words.columns("runway-or-approach", "indicator", "type", "side",
                "angle-deg", "angle", "meht-m", "meht-ft", "nominal-eye-height", "hover-eye-height", "eye-height-holds-for", "distance",
                "displacement", "latitude", "longitude", "axis-displacement", "rule-set", "latitude-published", "longitude-published",
                "wording").toList(), aids.stream().map(line -> row(words, line)).toList(), words.texts(notes), words);
    }

    private static List<SheetCell> row(SheetWords words, PublishedAid line) {
        String unknown = words.notKnown();
        String none = words.notApplicable();
        AidEvaluation aid = line.aid;
        String atRunway = line.isAtRunway() ? unknown : none;
        String atHelipad = line.isAtRunway() ? none : unknown;
        String ifNominal = aid.siting().value().isPresent() ? none : unknown;
        Double feet = line.mehtM == null ? null : Double.valueOf(Lengths.metresToFeet(line.mehtM));
        return List.of(SheetCell.text(words.word(ElementNames.of(aid.host()))), SheetCell.text(words.word(ElementNames.of(aid.aid()))),
                SheetCell.text(words.word(line.type())),
                SheetCell.text(words.word(line.side())), words.number(line.angleDeg, 3),
                SheetCell.text(line.angleDeg == null ? unknown : Angles.format(line.angleDeg)),
                SheetCell.number(line.mehtM, 2, atRunway), SheetCell.number(feet, 1, atRunway),
                SheetCell.number(line.nominalEyeHeightM, 2, ifNominal), SheetCell.number(line.hoverEyeHeightM, 2, atHelipad),
                words.number(line.onAngleDeg, 3), words.number(line.distanceM, 2), SheetCell.number(line.displacedM, 1, atRunway),
                words.number(line.place.map(SiteFrame.LatLon::latitudeDeg).orElse(null), 7),
                words.number(line.place.map(SiteFrame.LatLon::longitudeDeg).orElse(null), 7), words.number(line.axisTurnDeg, 2),
                SheetCell.text(words.word(aid.rules().descriptor().title())),
                SheetCell.text(line.latitude().orElse(unknown)), SheetCell.text(line.longitude().orElse(unknown)),
                SheetCell.text(line.wording(words.renderer())));
    }

    /** Writes degrees, minutes and hundredths of seconds without signs between them, rounded once: {@code 471759.63N}. */
    private static String published(double degrees, int digits, char positive, char negative) {
        long hundredths = Math.round(Math.abs(degrees) * 360_000);
        return String.format(Locale.ROOT, "%0" + digits + "d%02d%05.2f%c", hundredths / 360_000, hundredths / 6000 % 60, hundredths % 6000
                / 100.0, degrees < 0 ? negative : positive);
    }
}
