package slopewright.siting.magnetic;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.MagneticVariation;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;
import slopewright.standards.CitedText;
import slopewright.standards.Provenance;
import slopewright.standards.Source;

/**
 * The magnetic variation of a site on a day: entered, brought to the day with its annual change, or else computed by the model.
 *
 * @param variationDeg    magnetic north from true north, decimal degrees, east positive
 * @param annualChangeDeg its change in a year, decimal degrees; 0 where none was entered
 * @param date            the day
 * @param entered         whether it was entered
 * @param source          where it comes from, for people
 * @param notes           what a reader must know
 * @param citation        where it comes from
 */
public record SiteVariation(double variationDeg, double annualChangeDeg, LocalDate date, boolean entered, Message source,
        List<Message> notes,
        Citation citation) {

    /** An entered variation that differs by more than this from the model is remarked on. */
    private static final double REMARKABLE_DEG = 0.5;

    /** Copies the notes. */
    public SiteVariation {
        Objects.requireNonNull(date);
        Objects.requireNonNull(source);
        Objects.requireNonNull(citation);
        notes = List.copyOf(notes);
    }

    /**
     * Returns the variation at a runway end or helipad.
     *
     * @param host the runway end or approach direction, part of a project
     * @param date the day
     * @return the variation
     * @throws SitingException where none was entered and the model does not hold on that day, or the place is not known
     */
    public static SiteVariation of(ApproachHost host, LocalDate date) {
        Aerodrome aerodrome = Projects.project(host).map(Project::getAerodrome)
                .orElseThrow(() -> new SitingException(Message.of("site.no-aerodrome", ElementNames.of(host))));
        MagneticVariation entered = aerodrome.getMagneticVariation();
        if (entered != null && entered.getVariationDeg() != null) {
            return entered(entered, host, aerodrome, date);
        }
        return computed(host, aerodrome, date);
    }

    private static SiteVariation entered(MagneticVariation entered, ApproachHost host, Aerodrome aerodrome, LocalDate date) {
        List<Message> notes = new ArrayList<>();
        double annual = entered.getAnnualChangeDeg() == null ? 0 : entered.getAnnualChangeDeg();
        Optional<LocalDate> of = date(entered.getDate());
        double variation = entered.getVariationDeg();
        if (of.isPresent() && entered.getAnnualChangeDeg() != null) {
            variation += annual * (MagneticModel.decimalYear(date) - MagneticModel.decimalYear(of.get()));
        } else {
            notes.add(Message.of(of.isEmpty() ? "variation.without-date" : "variation.without-change"));
        }
        double brought = variation;
        Optional<Declination> modelled = modelled(host, aerodrome, date);
        modelled.map(model -> model.declinationDeg() - brought).filter(gap -> Math.abs(gap) > REMARKABLE_DEG)
                .ifPresent(gap -> notes.add(Message.of("variation.differs", Words.name(MagneticModel.bundled().name()),
                        Words.degrees(brought + gap), Words.name(date.toString()), Words.degrees(Math.abs(gap)))));
        boolean sourced = entered.getSource() != null && !entered.getSource().isBlank();
        Argument from = sourced ? Words.name(entered.getSource()) : Message.of("variation.no-source");
        Message asEntered = Message.of(of.isPresent() ? "variation.entered-on" : "variation.entered",
                Words.degrees(entered.getVariationDeg()), Words.name(of.map(String::valueOf).orElse("")), Words.degrees(annual), from);
        Message source = modelled.map(model -> Message.of("variation.beside-model", asEntered, Words.name(model.model()),
                Words.degrees(model.declinationDeg()))).orElse(asEntered);
        return new SiteVariation(variation, annual, date, true, source, notes, new Citation("magnetic.variation",
                new Source("project", Message.of("cited.variation-entered", from), CitedText.of(of.map(String::valueOf).orElse(""))),
                CitedText.of(""), Provenance.OVERRIDE, CitedText.of(""), ""));
    }

    private static Optional<LocalDate> date(String text) {
        if (text == null || text.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            throw new SitingException(Message.of("variation.no-date", Words.name(text)));
        }
    }

    /** Returns what the model gives, empty where it cannot say. */
    private static Optional<Declination> modelled(ApproachHost host, Aerodrome aerodrome, LocalDate date) {
        try {
            return Optional.of(model(host, aerodrome, date));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    private static Declination model(ApproachHost host, Aerodrome aerodrome, LocalDate date) {
        SiteFrame frame = SiteFrame.of(host);
        double geoid = aerodrome.getGeoidOffsetM() == null ? 0 : aerodrome.getGeoidOffsetM();
        Optional<SiteFrame.LatLon> place = frame.latLon(new FramePoint(0, 0, 0));
        if (place.isEmpty() && (aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null)) {
            throw new SitingException(Message.of("variation.no-position", ElementNames.of(host)));
        }
        SiteFrame.LatLon at = place.orElseGet(() -> new SiteFrame.LatLon(aerodrome.getLatitudeDeg(), aerodrome.getLongitudeDeg()));
        return MagneticModel.bundled().declination(at.latitudeDeg(), at.longitudeDeg(), frame.originElevationM() + geoid, date);
    }

    private static SiteVariation computed(ApproachHost host, Aerodrome aerodrome, LocalDate date) {
        Declination found = model(host, aerodrome, date);
        List<Message> notes = new ArrayList<>(found.notes());
        if (aerodrome.getGeoidOffsetM() == null) {
            notes.add(Message.of("variation.no-geoid"));
        }
        Message source = Message.of("variation.of-model", Words.name(found.model()), Words.quantity(found.epoch(), Notation.YEAR),
                Words.name(date.toString()));
        return new SiteVariation(found.declinationDeg(), found.annualChangeDeg(), date, false, source, notes, found.citation());
    }

    /** Returns a true bearing as a magnetic one, decimal degrees from 0 to 360. */
    public double magneticDeg(double trueDeg) {
        return Angles.normaliseBearingDeg(trueDeg - variationDeg);
    }

    /** Returns what the model gives at a runway end or helipad on a day, whatever was entered; empty where it cannot say. */
    public static Optional<Declination> modelled(ApproachHost host, LocalDate date) {
        return Projects.project(host).map(Project::getAerodrome).flatMap(aerodrome -> modelled(host, aerodrome, date));
    }
}
