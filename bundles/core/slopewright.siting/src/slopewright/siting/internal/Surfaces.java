package slopewright.siting.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Approach;
import slopewright.siting.Input;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnshiftedDistance;
import slopewright.standards.Citation;
import slopewright.standards.HeliportSurfaceTable;
import slopewright.standards.Provenance;
import slopewright.standards.RuleChoice;
import slopewright.standards.SurfaceTable;

/** Makes the obstacle surface of a layout from the rule set: from its printed table, or from angles below the lowest signal. */
final class Surfaces {

    private final String family;
    private final SitingRequest request;
    private final RuleReader reader;
    private Optional<Message> reason = Optional.empty();

    Surfaces(String family, SitingRequest request, RuleReader reader) {
        this.family = family;
        this.request = request;
        this.reader = reader;
    }

    /**
     * What a surface hangs on.
     *
     * @param lowestSettingDeg the setting that tables call A
     * @param distanceM        the unit nearest to the approach, metres from the threshold
     * @param unshifted        its distance before any shift that cures a penetration
     * @param lensHeightM      its lens above the threshold
     */
    record Anchor(double lowestSettingDeg, double distanceM, UnshiftedDistance unshifted, double lensHeightM) {
    }

    /** Returns why the last surface could not be made; empty where it could. */
    Optional<Message> reason() {
        return reason;
    }

    private Optional<SurfacePlan> none(String key, Argument... arguments) {
        reason = Optional.of(Message.of(key, arguments));
        return Optional.empty();
    }

    /**
     * Makes the surface.
     *
     * @param anchor           what it hangs on
     * @param lowestOnSlopeDeg the lowest on-slope signal, decimal degrees
     * @return the surface; empty where there is none, and then {@link #reason} says why
     */
    Optional<SurfacePlan> make(Anchor anchor, double lowestOnSlopeDeg) {
        boolean printed = "table".equals(reader.rules().descriptor().surface());
        if (request.atHelipad()) {
            return printed ? heliportTable(anchor) : angularAtHelipad(anchor, lowestOnSlopeDeg);
        }
        return printed ? table(anchor) : angular(anchor, lowestOnSlopeDeg, family + ".");
    }

    private Optional<SurfacePlan> angularAtHelipad(Anchor anchor, double lowestOnSlopeDeg) {
        if (reader.has(family + ".helipad-surface-splay-deg")) {
            return angular(anchor, lowestOnSlopeDeg, family + ".helipad-");
        }
        return startsAtReferencePoint() ? angular(anchor, lowestOnSlopeDeg, family + ".") : none("surface.none-at-helipads");
    }

    private boolean startsAtReferencePoint() {
        return reader.rules().choice("obstacle.surface-datum").filter(datum -> datum.word() == RuleChoice.REFERENCE_POINT).isPresent();
    }

    private Optional<SurfacePlan> table(Anchor anchor) {
        Optional<SurfaceTable> table = reader.rules().surface();
        Optional<Double> code = request.number(Input.CODE);
        if (table.isEmpty()) {
            return none("surface.none-without-table");
        }
        if (code.isEmpty()) {
            return none("surface.none-without-code", Input.CODE.message());
        }
        if (request.approach() == Approach.NOT_STATED) {
            return none("surface.none-without-approach");
        }
        Optional<SurfaceTable.Row> row = table.get().row(isInstrument(), (int) Math.round(code.get()));
        Optional<SurfaceTable.Slope> slope = row.flatMap(found -> found.slope(family));
        if (slope.isEmpty()) {
            return none("surface.none-printed", table.get().citation().text(),
                    Words.term("approach." + request.approach().key()), Words.count(Math.round(code.get())));
        }
        if (table.get().fromIndicator() && anchor.unshifted().reason().isPresent()) {
            return none("surface.none-without-unshifted", anchor.unshifted().reason().get());
        }
        SurfaceTable.Row found = row.orElseThrow();
        double slopeDeg = slope.get().basis() == SurfaceTable.SlopeBasis.FIXED ? slope.get().deg()
                : anchor.lowestSettingDeg() - slope.get().deg();
        double start = table.get().fromIndicator()
                ? anchor.distanceM() - anchor.unshifted().distanceM().orElseThrow() - found.startM() : -found.startM();
        Citation printed = table.get().citation();
        cite("surface.inner-edge-m", found.innerEdgeM(family), "m", printed, found.dimensionProvenance());
        cite("surface.start-m", found.startM(), "m", printed, found.dimensionProvenance());
        cite("surface.divergence-percent", found.divergencePercent(), "%", printed, found.dimensionProvenance());
        cite("surface.length-m", found.lengthM(family), "m", printed, found.lengthProvenance());
        cite("surface.slope-deg", slope.get().deg(), "deg", printed, found.slopeProvenance());
        noteThresholdDatum();
        return Optional.of(new SurfacePlan(slopeDeg, start, 0, found.innerEdgeM(family), found.divergencePercent(), OptionalDouble.empty(),
                found.lengthM(family), 0, 0, List.of(printed.atMost(weakest(found)))));
    }

    private boolean isInstrument() {
        return request.approach() == Approach.INSTRUMENT;
    }

    private void noteThresholdDatum() {
        reader.note(Message.of("surface.note.threshold-datum"));
    }

    private double belowDeg(Anchor anchor, double lowestOnSlopeDeg, String prefix) {
        return reader.has(prefix + "surface-below-setting-deg")
                ? anchor.lowestSettingDeg() - reader.degrees(prefix + "surface-below-setting")
                : lowestOnSlopeDeg - reader.degrees(prefix + "surface-below-lowest");
    }

    private static Provenance weakest(SurfaceTable.Row row) {
        Provenance weakest = row.dimensionProvenance();
        for (Provenance next : List.of(row.lengthProvenance(), row.slopeProvenance())) {
            weakest = next.compareTo(weakest) > 0 ? next : weakest;
        }
        return weakest;
    }

    private void cite(String name, double value, String unit, Citation printed, Provenance provenance) {
        reader.use(name, value, unit, printed.atMost(provenance));
    }

    private Optional<SurfacePlan> heliportTable(Anchor anchor) {
        Optional<HeliportSurfaceTable> table = reader.rules().heliportSurface();
        if (table.isEmpty() || table.get().rows().stream().noneMatch(row -> row.belowDeg().containsKey(family))) {
            return none("surface.none-printed-at-helipad");
        }
        if (request.approach() == Approach.NOT_STATED) {
            return none("surface.none-without-approach");
        }
        Optional<HeliportSurfaceTable.Row> row = table.get().row(isInstrument());
        if (row.isEmpty() || !row.get().belowDeg().containsKey(family)) {
            return none("surface.none-printed-at-helipad");
        }
        if (!request.has(Input.SAFETY_AREA_WIDTH)) {
            return none("surface.none-without-safety-area", Input.SAFETY_AREA_WIDTH.message());
        }
        HeliportSurfaceTable.Row found = row.get();
        double below = found.belowDeg().get(family);
        double length = request.number(Input.FATO_LENGTH).orElse(0.0);
        if (length == 0 && request.option(SitingRequest.DESCRIBED_PLACE).isPresent()) {
            return none("surface.none-without-fato", Input.FATO_LENGTH.message());
        }
        if (length == 0) {
            reader.note(Message.of("surface.note.fato-unknown"));
        }
        Citation printed = table.orElseThrow().citation();
        reader.use("surface.slope-below-a-deg", below, "deg", printed);
        reader.use("surface.start-from-fato-m", found.startM(), "m", printed);
        reader.use("surface.divergence-percent", found.divergencePercent(), "%", printed);
        reader.use("surface.length-m", found.lengthM(), "m", printed);
        return Optional.of(beforeFato(anchor.lowestSettingDeg() - below, length, found, printed));
    }

    /**
     * Lays the surface before the end of the FATO. Where how far that reaches is not known, it begins where the FATO may end nearest, and
     * is nowhere higher than a surface that begins where the FATO may end farthest: whatever the truth is, it is held.
     */
    private SurfacePlan beforeFato(double slopeDeg, double lengthM, HeliportSurfaceTable.Row row, Citation printed) {
        double unsure = Math.max(0, lengthM - request.number(Input.FATO_LEAST_LENGTH).orElse(lengthM)) / 2;
        if (unsure > 0) {
            reader.note(Message.of("surface.note.fato-bearing-unknown", Words.m(unsure)));
        }
        return new SurfacePlan(slopeDeg, unsure - lengthM / 2 - row.startM(), -unsure * Angles.tanDeg(slopeDeg),
                request.need(Input.SAFETY_AREA_WIDTH), row.divergencePercent(), OptionalDouble.empty(), row.lengthM() + unsure, 0, 0,
                List.of(printed));
    }

    /**
     * Returns the level of the reference point, metres above the threshold: that of the runway there, where its profile is known and lies
     * below the lenses, or else that of the lenses, which the formula of the source takes for it. The lower one is on the safe side.
     */
    private double referenceLevelM(Anchor anchor) {
        Optional<Double> runway = request.runwayProfile().filter(profile -> profile.covers(anchor.distanceM()))
                .map(profile -> profile.heightAt(anchor.distanceM())).filter(level -> level < anchor.lensHeightM());
        reader.note(Message.of(runway.isPresent() ? "surface.note.runway-datum" : "surface.note.lens-datum"));
        return runway.orElse(anchor.lensHeightM());
    }

    private Optional<SurfacePlan> angular(Anchor anchor, double lowestOnSlopeDeg, String prefix) {
        if (!reader.has(prefix + "surface-splay-deg")) {
            return none("surface.none-given");
        }
        boolean fixed = reader.has(prefix + "surface-slope-deg");
        double slopeDeg = fixed ? reader.degrees(prefix + "surface-slope") : belowDeg(anchor, lowestOnSlopeDeg, prefix);
        double splay = reader.degrees(prefix + "surface-splay");
        boolean longer = request.hasGlidePath() && reader.hasMetres(prefix + "surface-glide-path-length");
        double length = reader.metres(prefix + (longer ? "surface-glide-path-length" : "surface-length"));
        double before = reader.metres(prefix + "surface-origin-before");
        double start = startsAtReferencePoint() ? anchor.distanceM() - before : -before;
        if (reader.chooses(prefix + "surface-length-from-threshold", RuleChoice.YES)) {
            length += start;
        }
        double height = startsAtReferencePoint() ? referenceLevelM(anchor) : 0;
        if (!startsAtReferencePoint()) {
            noteThresholdDatum();
        }
        double clearance = reader.hasMetres(prefix + "surface-clearance") ? reader.metres(prefix + "surface-clearance") : 0;
        if (clearance > 0) {
            reader.note(Message.of("surface.note.clearance", Words.m(clearance), Words.degrees(slopeDeg)));
        }
        List<Citation> citations = reader.citations().stream().filter(use -> use.name().contains("surface-")).map(use -> use.citation())
                .toList();
        return Optional.of(new SurfacePlan(slopeDeg, start, height - clearance, 0, Angles.tanDeg(splay) * 100, OptionalDouble.of(splay),
                length, 0, clearance, citations));
    }
}
