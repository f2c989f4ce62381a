package slopewright.exchange.runways;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import slopewright.evaluation.site.KnownRunway;
import slopewright.evaluation.site.SiteNumber;
import slopewright.exchange.internal.runways.Surfaces;
import slopewright.geometry.Lengths;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.SitingException;
import slopewright.siting.magnetic.MagneticModel;

/**
 * What a new site can make of one runway end of open data, or why it can make nothing.
 *
 * @param ident   designator as the data have it
 * @param runway  the runway
 * @param refused why nothing is made of it; empty where something is
 * @param known   the runway as it is taken over, in metres and true degrees; empty where it is refused
 */
public record RunwayOffer(String ident, OpenRunway runway, Optional<Message> refused, Optional<KnownRunway> known) {

    private static final Pattern DESIGNATOR = Pattern.compile("0?([1-9])([LCR]?)|([12][0-9]|3[0-6])([LCR]?)");
    private static final double OTHER_WAY_DEG = 90;
    private static final double DESIGNATOR_DEG = 10;
    private static final double HEADING_DEG = 1;
    private static final double SAME_PLACE_M = 1;
    private static final double LENGTH_M = 2;
    private static final double TURN_DEG = 360;

    /** A refusal on the way. */
    private static final class Refusal extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Message reason;

        Refusal(Message reason) {
            this.reason = reason;
        }
    }

    /** An end with what follows from it: where it leads. */
    private record Placed(OpenRunway.OpenEnd end, String designator, double bearingDeg) {
    }

    static List<RunwayOffer> of(OpenAirport airport, String source, String licence, LocalDate day) {
        List<RunwayOffer> offers = new ArrayList<>();
        for (OpenRunway runway : airport.runways()) {
            for (OpenRunway.OpenEnd end : runway.ends()) {
                offers.add(of(airport, runway, end, source, licence, day));
            }
        }
        return List.copyOf(offers);
    }

    private static RunwayOffer of(OpenAirport airport, OpenRunway runway, OpenRunway.OpenEnd end, String source, String licence,
            LocalDate day) {
        try {
            KnownRunway known = known(airport, runway, end, source, licence, day);
            return new RunwayOffer(end.ident(), runway, Optional.empty(), Optional.of(known));
        } catch (Refusal e) {
            return new RunwayOffer(end.ident(), runway, Optional.of(e.reason), Optional.empty());
        }
    }

    private static Message said(String name, Object... texts) {
        return Message.of("open-data." + name, Arrays.stream(texts).map(text -> text instanceof Argument
                argument ? argument : Words.name(String.valueOf(text))).toArray(Argument[]::new));
    }

    private static KnownRunway known(OpenAirport airport, OpenRunway runway, OpenRunway.OpenEnd end, String source, String licence,
            LocalDate day) {
        refuseClosed(airport, runway);
        Optional<OpenRunway.OpenEnd> far = runway.ends().stream().filter(other -> other != end).findFirst();
        String designator = designator(end.ident()).orElseThrow(() -> new Refusal(said("refused.designator", end.ident())));
        if (isTwice(airport, designator)) {
            throw new Refusal(said("refused.twice", designator));
        }
        if (!end.hasPlace()) {
            throw new Refusal(said("refused.place", end.ident()));
        }
        List<Message> notes = new ArrayList<>();
        Placed here = placed(end, designator, far, notes);
        compare(here, airport, day, notes);
        OptionalDouble lengthM = inRange(SiteNumber.LENGTH, runway.lengthFt(), notes);
        OptionalDouble widthM = inRange(SiteNumber.WIDTH, runway.widthFt(), notes);
        far.filter(OpenRunway.OpenEnd::hasPlace).ifPresent(other -> compareLength(lengthM, end, other, notes));
        KnownRunway.End first = end(here, far, lengthM, notes);
        Optional<KnownRunway.End> second = far.filter(OpenRunway.OpenEnd::hasPlace).flatMap(other -> designator(other.ident())
                .map(name -> end(placed(other, name, Optional.of(end), notes), Optional.of(end), lengthM, notes)));
        if (second.isEmpty()) {
            notes.add(said("note.no-other-end", end.ident()));
        }
        return new KnownRunway(airport.name(), airport.code(), first, second, lengthM, widthM,
                Optional.of(runway.surface()).filter(word -> !word.isEmpty()), Surfaces.isPaved(runway.surface()), source, licence, notes);
    }

    private static void refuseClosed(OpenAirport airport, OpenRunway runway) {
        if (airport.isClosed()) {
            throw new Refusal(said("refused.airport-closed", airport.code()));
        }
        if (runway.isClosed()) {
            throw new Refusal(said("refused.closed"));
        }
        if (Surfaces.isWater(runway.surface())) {
            throw new Refusal(said("refused.water"));
        }
    }

    /** Returns a designator with two digits and its letter; empty where the data have none of a runway. */
    private static Optional<String> designator(String ident) {
        Matcher found = DESIGNATOR.matcher(ident.strip().toUpperCase(Locale.ROOT));
        if (!found.matches()) {
            return Optional.empty();
        }
        return Optional.of(found.group(1) == null ? found.group(3) + found.group(4) : "0" + found.group(1) + found.group(2));
    }

    private static boolean isTwice(OpenAirport airport, String designator) {
        return airport.runways().stream().filter(runway -> !runway.isClosed()).flatMap(runway -> runway.ends().stream())
                .filter(end -> designator(end.ident()).filter(designator::equals).isPresent()).count() > 1;
    }

    private static GeodesicData between(OpenRunway.OpenEnd from, OpenRunway.OpenEnd to) {
        return Geodesic.WGS84.Inverse(from.latitudeDeg().getAsDouble(), from.longitudeDeg().getAsDouble(), to.latitudeDeg().getAsDouble(),
                to.longitudeDeg().getAsDouble());
    }

    /** Which way an end leads: to the other one where the data have its place, else by the heading. */
    private static Placed placed(OpenRunway.OpenEnd end, String designator, Optional<OpenRunway.OpenEnd> far, List<Message> notes) {
        if (far.filter(OpenRunway.OpenEnd::hasPlace).isEmpty()) {
            double heading = end.headingDeg().orElseThrow(() -> new Refusal(said("refused.no-direction", end.ident())));
            notes.add(said("note.heading-alone", Words.degrees(heading)));
            return new Placed(end, designator, turned(heading));
        }
        GeodesicData way = between(end, far.get());
        if (way.s12 < SAME_PLACE_M) {
            throw new Refusal(said("refused.same-place", end.ident(), far.get().ident()));
        }
        return new Placed(end, designator, turned(way.azi1));
    }

    /** The designator is magnetic, the heading called true: each against where the places of the ends lead. */
    private static void compare(Placed here, OpenAirport airport, LocalDate day, List<Message> notes) {
        OpenRunway.OpenEnd end = here.end();
        OptionalDouble variation = variation(end, day);
        double magnetic = turned(here.bearingDeg() - variation.orElse(0));
        double named = Integer.parseInt(here.designator().substring(0, 2)) * 10.0;
        double apart = apart(magnetic, named);
        if (apart > OTHER_WAY_DEG) {
            throw new Refusal(said("refused.other-way", end.ident(), Words.degrees(here.bearingDeg()), Words.degrees(magnetic)));
        }
        if (variation.isPresent() && apart > DESIGNATOR_DEG) {
            notes.add(said("note.designator", end.ident(), Words.degrees(magnetic), Words.degrees(apart)));
        }
        if (!here.designator().equals(end.ident())) {
            notes.add(said("note.written-out", end.ident(), here.designator()));
        }
        if (end.headingDeg().isPresent() && apart(end.headingDeg().getAsDouble(), here.bearingDeg()) > HEADING_DEG) {
            boolean asMagnetic = variation.isPresent() && apart(end.headingDeg().getAsDouble(), magnetic) <= HEADING_DEG;
            notes.add(said(asMagnetic ? "note.heading-magnetic" : "note.heading", Words.degrees(end.headingDeg().getAsDouble()),
                    Words.degrees(here.bearingDeg()), Words.degrees(variation.orElse(0))));
        }
    }

    private static OptionalDouble variation(OpenRunway.OpenEnd end, LocalDate day) {
        try {
            return OptionalDouble.of(MagneticModel.bundled().declination(end.latitudeDeg().getAsDouble(), end.longitudeDeg().getAsDouble(),
                    metres(end.elevationFt()).orElse(0), day).declinationDeg());
        } catch (SitingException e) {
            return OptionalDouble.empty();
        }
    }

    private static void compareLength(OptionalDouble lengthM, OpenRunway.OpenEnd end, OpenRunway.OpenEnd far, List<Message> notes) {
        double measured = between(end, far).s12;
        if (lengthM.isPresent() && Math.abs(measured - lengthM.getAsDouble()) > LENGTH_M) {
            notes.add(said("note.length", Words.m(lengthM.getAsDouble()), Words.m(measured)));
        }
    }

    /**
     * The data have the place and the elevation of the end of the pavement. A displaced threshold lies so far up the runway, and its
     * elevation on the straight line between both ends.
     */
    private static KnownRunway.End end(Placed here, Optional<OpenRunway.OpenEnd> far, OptionalDouble lengthM, List<Message> notes) {
        OpenRunway.OpenEnd end = here.end();
        OptionalDouble elevation = inRange(SiteNumber.ELEVATION, end.elevationFt(), notes);
        if (elevation.isEmpty() && end.elevationFt().isEmpty()) {
            notes.add(said("note.no-elevation", end.ident()));
        }
        double displaced = metres(end.displacedFt()).orElse(0);
        if (displaced < 0) {
            throw new Refusal(said("refused.displaced", end.ident(), Words.m(displaced)));
        }
        if (end.displacedFt().isEmpty()) {
            notes.add(said("note.no-displacement", end.ident()));
        }
        if (displaced == 0) {
            return new KnownRunway.End(here.designator(), end.latitudeDeg().getAsDouble(), end.longitudeDeg().getAsDouble(),
                    here.bearingDeg(), elevation, metres(end.displacedFt()), OptionalDouble.empty());
        }
        double length = lengthM.orElseThrow(() -> new Refusal(said("refused.displaced", end.ident(), Words.m(displaced))));
        double farDisplaced = far.map(other -> Math.max(0, metres(other.displacedFt()).orElse(0))).orElse(0.0);
        if (displaced + farDisplaced >= length) {
            throw new Refusal(said("refused.displaced", end.ident(), Words.m(displaced)));
        }
        GeodesicData place = Geodesic.WGS84.Direct(end.latitudeDeg().getAsDouble(), end.longitudeDeg().getAsDouble(), here.bearingDeg(),
                displaced);
        OptionalDouble farElevation = far.isEmpty() ? OptionalDouble.empty() : inRange(SiteNumber.ELEVATION, far.get().elevationFt(),
                new ArrayList<>());
        OptionalDouble threshold = elevation;
        if (elevation.isPresent()) {
            threshold = farElevation.isPresent() ? OptionalDouble.of(elevation.getAsDouble() + (farElevation.getAsDouble() - elevation
                    .getAsDouble()) * displaced / length) : elevation;
            notes.add(said(farElevation.isPresent() ? "note.displaced-between" : "note.displaced-level", end.ident(), Words.m(displaced),
                    Words.m(threshold.getAsDouble())));
        }
        return new KnownRunway.End(here.designator(), place.lat2, place.lon2, turned(place.azi2), threshold, OptionalDouble.of(displaced),
                elevation);
    }

    private static OptionalDouble inRange(SiteNumber number, OptionalDouble feet, List<Message> notes) {
        OptionalDouble metres = metres(feet);
        if (metres.isPresent() && (metres.getAsDouble() < number.min() || metres.getAsDouble() > number.max())) {
            notes.add(said("note.out-of-range", number.term(), Words.m(metres.getAsDouble()), Words.m(number.min()),
                    Words.m(number.max())));
            return OptionalDouble.empty();
        }
        return metres;
    }

    private static OptionalDouble metres(OptionalDouble feet) {
        return feet.isPresent() ? OptionalDouble.of(Lengths.feetToMetres(feet.getAsDouble())) : OptionalDouble.empty();
    }

    private static double turned(double degrees) {
        double turn = degrees % TURN_DEG;
        return turn < 0 ? turn + TURN_DEG : turn;
    }

    private static double apart(double one, double other) {
        double turn = Math.abs(one - other) % TURN_DEG;
        return Math.min(turn, TURN_DEG - turn);
    }
}
