package slopewright.siting.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Input;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;
import slopewright.standards.HeliportSurfaceTable;
import slopewright.standards.Provenance;
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
     * @param lowestOnSlopeDeg the lowest on-slope signal
     * @param distanceM        the unit nearest to the approach, metres from the threshold
     * @param nominalDistanceM its distance before any shift that cures a penetration
     * @param lensHeightM      its lens above the threshold
     * @param fixedSlopeDeg    the slope where the layout itself sets it, as a raised red limit does
     */
    record Anchor(double lowestSettingDeg, double lowestOnSlopeDeg, double distanceM, double nominalDistanceM, double lensHeightM,
            OptionalDouble fixedSlopeDeg) {
    }

    /** Returns why the last surface could not be made; empty where it could. */
    Optional<Message> reason() {
        return reason;
    }

    private Optional<SurfacePlan> none(Message why) {
        reason = Optional.of(why);
        return Optional.empty();
    }

    Optional<SurfacePlan> make(Anchor anchor) {
        if (request.atHelipad()) {
            return "table".equals(reader.rules().descriptor().surface()) ? heliportTable(anchor) : angularAtHelipad(anchor);
        }
        return "table".equals(reader.rules().descriptor().surface()) ? table(anchor) : angular(anchor, family + ".");
    }

    private Optional<SurfacePlan> angularAtHelipad(Anchor anchor) {
        if (reader.has(family + ".helipad-surface-splay-deg")) {
            return angular(anchor, family + ".helipad-");
        }
        if (!"reference-point".equals(reader.rules().descriptor().datum())) {
            return none(Message.of("surface.none-at-helipads"));
        }
        return angular(anchor, family + ".");
    }

    private Optional<SurfacePlan> table(Anchor anchor) {
        Optional<SurfaceTable> table = reader.rules().surface();
        Optional<Double> code = request.number(Input.CODE);
        if (table.isEmpty() || code.isEmpty()) {
            return none(Message.of(table.isEmpty() ? "surface.none-without-table" : "surface.none-without-code"));
        }
        Optional<SurfaceTable.Row> row = table.get().row(request.instrument(), (int) Math.round(code.get()));
        Optional<SurfaceTable.Slope> slope = row.flatMap(one -> one.slope(family));
        if (slope.isEmpty()) {
            return none(Message.of("surface.none-printed", Words.name(table.get().citation().text()),
                    Words.term(request.instrument() ? "approach.instrument" : "approach.visual"), Words.count(Math.round(code.get()))));
        }
        SurfaceTable.Row found = row.orElseThrow();
        double slopeDeg = anchor.fixedSlopeDeg().orElse(slope.get().basis() == SurfaceTable.SlopeBasis.FIXED ? slope.get().deg()
                : anchor.lowestSettingDeg() - slope.get().deg());
        double start = table.get().fromIndicator() ? anchor.distanceM() - anchor.nominalDistanceM() - found.startM() : -found.startM();
        Citation printed = table.get().citation();
        cite("surface.inner-edge-m", found.innerEdgeM(family), "m", printed, found.dimensionProvenance());
        cite("surface.start-m", found.startM(), "m", printed, found.dimensionProvenance());
        cite("surface.divergence-percent", found.divergencePercent(), "%", printed, found.dimensionProvenance());
        cite("surface.length-m", found.lengthM(family), "m", printed, found.lengthProvenance());
        cite("surface.slope-deg", slope.get().deg(), "deg", printed, found.slopeProvenance());
        anchor.fixedSlopeDeg().ifPresent(raised -> {
            cite("surface.raised-slope-deg", raised, "deg", printed, Provenance.FROM_MEMORY);
            reader.note(String.format(Locale.ROOT, "The surface is taken to rise with the raised red limit of %.2f° instead of the printed"
                    + " %.2f°; that reading is to be confirmed.", raised, slope.get().deg()));
        });
        reader.note("The surface starts at threshold level; that datum is to be confirmed.");
        Provenance provenance = anchor.fixedSlopeDeg().isPresent() ? Provenance.FROM_MEMORY : weakest(found);
        return Optional.of(new SurfacePlan(slopeDeg, start, 0, found.innerEdgeM(family), found.divergencePercent(), OptionalDouble.empty(),
                found.lengthM(family), 0, List.of(printed.atMost(provenance))));
    }

    private double belowDeg(Anchor anchor, String prefix) {
        return reader.has(prefix + "surface-below-setting-deg")
                ? anchor.lowestSettingDeg() - reader.degrees(prefix + "surface-below-setting")
                : anchor.lowestOnSlopeDeg() - reader.degrees(prefix + "surface-below-lowest");
    }

    private static Provenance weakest(SurfaceTable.Row row) {
        Provenance weakest = row.dimensionProvenance();
        for (Provenance other : List.of(row.lengthProvenance(), row.slopeProvenance())) {
            weakest = other.compareTo(weakest) > 0 ? other : weakest;
        }
        return weakest;
    }

    private void cite(String name, double value, String unit, Citation printed, Provenance provenance) {
        reader.use(name, value, unit, printed.atMost(provenance));
    }

    private Optional<SurfacePlan> heliportTable(Anchor anchor) {
        Optional<HeliportSurfaceTable> table = reader.rules().heliportSurface();
        Optional<HeliportSurfaceTable.Row> row = table.flatMap(one -> one.row(request.instrument()));
        if (row.isEmpty() || !row.get().belowDeg().containsKey(family)) {
            return none(Message.of("surface.none-printed-at-helipad"));
        }
        if (!request.has(Input.SAFETY_AREA_WIDTH)) {
            return none(Message.of("surface.none-without-safety-area"));
        }
        HeliportSurfaceTable.Row found = row.get();
        double below = found.belowDeg().get(family);
        double half = request.number(Input.FATO_LENGTH).orElse(0.0) / 2;
        if (half == 0) {
            reader.note("The FATO length is not known: the surface is taken to start from the hover point.");
        }
        Citation printed = table.orElseThrow().citation();
        reader.use("surface.slope-below-a-deg", below, "deg", printed);
        reader.use("surface.start-from-fato-m", found.startM(), "m", printed);
        reader.use("surface.divergence-percent", found.divergencePercent(), "%", printed);
        reader.use("surface.length-m", found.lengthM(), "m", printed);
        return Optional.of(new SurfacePlan(anchor.lowestSettingDeg() - below, -half - found.startM(), 0,
                request.need(Input.SAFETY_AREA_WIDTH), found.divergencePercent(), OptionalDouble.empty(), found.lengthM(), 0,
                        List.of(printed)));
    }

    private Optional<SurfacePlan> angular(Anchor anchor, String prefix) {
        if (!reader.has(prefix + "surface-splay-deg")) {
            return none(Message.of("surface.none-given"));
        }
        boolean fixed = reader.has(prefix + "surface-slope-deg");
        double slopeDeg = fixed ? reader.degrees(prefix + "surface-slope") : belowDeg(anchor, prefix);
        double splay = reader.degrees(prefix + "surface-splay");
        boolean longer = request.hasGlidePath() && reader.hasMetres(prefix + "surface-glide-path-length");
        double length = reader.metres(prefix + (longer ? "surface-glide-path-length" : "surface-length"));
        double before = reader.metres(prefix + "surface-origin-before");
        boolean atReferencePoint = "reference-point".equals(reader.rules().descriptor().datum());
        double start = atReferencePoint ? anchor.distanceM() - before : -before;
        if (reader.has(prefix + "surface-length-from-threshold")) {
            length += start;
        }
        double height = atReferencePoint ? anchor.lensHeightM() : 0;
        reader.note(atReferencePoint
                ? "The surface starts at the level of the lenses at the reference point and spreads from its own origin; both are to be "
                + "confirmed."
                : "The surface starts at threshold level; that datum is to be confirmed.");
        List<Citation> citations = reader.citations().stream().filter(use -> use.name().contains("surface-")).map(use -> use.citation())
                .toList();
        return Optional.of(new SurfacePlan(slopeDeg, start, height, 0, Angles.tanDeg(splay) * 100, OptionalDouble.of(splay), length, 0,
                citations));
    }
}
