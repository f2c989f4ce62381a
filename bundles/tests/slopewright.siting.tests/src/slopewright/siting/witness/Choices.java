package slopewright.siting.witness;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.witness.Angles;
import slopewright.witness.Edition;
import slopewright.witness.EyeHeights;
import slopewright.witness.Family;
import slopewright.witness.GroundLine;
import slopewright.witness.Layout;
import slopewright.witness.Settings;
import slopewright.witness.Surface;
import slopewright.witness.Surfaces;
import slopewright.witness.Transcription;

/** Where the texts leave something open and the two implementations chose differently: the product's choice in the witness' means. */
final class Choices {
    /** How near to a height over the threshold the plane of an edge passes that bounds it, metres. */
    private static final double FOUND_M = 1e-6;
    /** Far enough out that the whole row is seen, metres. */
    private static final double FARTHER_M = 100;

    private Choices() {
    }

    /**
     * Returns the MEHT of the witness. The allowance of 2' is that of 2.12 e of Vol I, about thresholds; Vol II has none, so that none is
     * taken off over a hover point. Abeam of a hover point nothing is seen of a row that stands beside it: the plane that bounds its signal
     * is read farther out and carried back.
     */
    static double mehtM(Trial trial, Layout layout) {
        if (trial.atHelipad() && layout.family().row() && Math.abs(layout.referenceAlongM()) < FOUND_M) {
            double rise = FARTHER_M * Angles.tanDeg(Settings.lowestOnSlopeDeg(layout)
                    + EyeHeights.allowanceMin(layout.edition(), layout.family()) / 60);
            return EyeHeights.leastOnSlopeM(layout, -FARTHER_M, 0, false) - rise;
        }
        return trial.atHelipad() ? EyeHeights.leastOnSlopeM(layout, 0, 0, false) : EyeHeights.mehtM(layout);
    }

    /**
     * Returns the angle that bounds the signal; no allowance over a hover point. Of a T form it is the edge that passes through the MEHT:
     * on ground that rises and falls the red of the wing bars can reach above the top of the nearest fly-up light.
     */
    static double lowestOnSlopeDeg(Trial trial, Layout layout) {
        if (layout.family().tForm()) {
            double height = mehtM(trial, layout);
            return layout.units().stream().flatMap(unit -> unit.sectors().stream()
                    .flatMap(sector -> Stream.of(sector.fromDeg(), sector.toDeg()))
                    .filter(deg -> Math.abs(unit.heightM() + unit.alongM() * Angles.tanDeg(deg) - height) <= FOUND_M))
                    .max(Comparator.naturalOrder()).orElse(Double.NaN);
        }
        double allowance = trial.atHelipad() ? EyeHeights.allowanceMin(layout.edition(), layout.family()) : 0;
        return Settings.lowestOnSlopeDeg(layout) + allowance / 60;
    }

    /** Returns the surface; empty where no text prints a slope for it. */
    static Optional<Surface> surface(Trial trial, Layout layout) {
        if (trial.atHelipad()) {
            return Optional.of(heliport(trial, layout));
        }
        if (layout.edition() == Edition.CASA) {
            return Optional.of(australian(trial, layout));
        }
        if (layout.edition().american()) {
            return Optional.of(american(trial, layout));
        }
        Surface surface = Surfaces.runway(layout, trial.code(), trial.approach(), Double.NaN, trial.ground().runway());
        return surface.evaluable() ? Optional.of(surface) : Optional.empty();
    }

    /** The US text prints no length at heliports (AC 150/5390-2B 213): four miles, those of Order 8200.1 7.10 for every system. */
    private static Surface heliport(Trial trial, Layout layout) {
        Surface surface = Surfaces.heliport(layout, trial.approach(), 36, -12);
        return layout.edition().american() ? with(surface, surface.startAlongM(), surface.startHeightM(), surface.slopeDeg(),
                Transcription.number(layout.edition(), "all", "surface.length-sm") * Angles.STATUTE_MILE_M) : surface;
    }

    /**
     * United States. Level: the reference point of a row is, by the distance, at the row; the runway's level there where its profile is
     * known and lower than the lenses, else the lenses'. Bars and single units: 1 degree is taken off the lowest on-path signal, which is
     * lower than the path of Order 8200.1 7.10 and so on the safe side.
     */
    private static Surface american(Trial trial, Layout layout) {
        Surface surface = Surfaces.runway(layout, trial.code(), trial.approach(), Double.NaN, trial.ground().runway());
        double lens = layout.referenceHeightM();
        GroundLine runway = trial.ground().runway();
        boolean known = trial.request().runwayProfile().isPresent();
        double level = known ? Math.min(lens, runway.heightM(layout.referenceAlongM())) : lens;
        double slope = layout.family().row() ? surface.slopeDeg() : Settings.lowestOnSlopeDeg(layout) - 1;
        return with(surface, surface.startAlongM(), level, slope, surface.lengthM());
    }

    /**
     * Australia. T forms: 11 m under the 1.9 degrees must stay clear, and the older manual's start 150 m before the threshold is kept, the
     * safer of the two; seven nautical miles beside a glide path alone. Rows: 0.57 degrees below A from memory, no text read says so.
     */
    private static Surface australian(Trial trial, Layout layout) {
        Surface surface = Surfaces.runway(layout, trial.code(), slopewright.witness.Approach.VISUAL, Double.NaN, trial.ground().runway());
        if (layout.family() == Family.FOUR_UNIT_ROW) {
            return with(surface, 0, 0, layout.leastSettingDeg() - 0.57, surface.lengthM());
        }
        return with(surface, -Transcription.number(layout.edition(), "all", "surface.older-manual.start-m"),
                -Transcription.number(layout.edition(), "all", "surface.clearance-m"), surface.slopeDeg(), surface.lengthM());
    }

    private static Surface with(Surface surface, double startM, double levelM, double slopeDeg, double lengthM) {
        return new Surface(startM, levelM, surface.innerEdgeM(), surface.divergencePercent(), surface.divergenceDeg(), slopeDeg, lengthM,
                surface.pivotAlongM(), surface.axisTurnDeg());
    }
}
