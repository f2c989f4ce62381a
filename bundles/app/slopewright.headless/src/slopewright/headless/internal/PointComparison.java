package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

import slopewright.exchange.PointBlock;
import slopewright.exchange.PointFile;
import slopewright.exchange.map.MarginRaster;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.geometry.SurfaceSweep;

/** Counts points against a surface block by block, on all cores, and keeps the worst penetrations; memory does not grow with the file. */
final class PointComparison implements PointFile.BlockSink {

    private static final int RUN = 1 << 15;
    private static final Comparator<Hit> LEAST_FIRST = Comparator.comparingDouble(Hit::excessM)
            .thenComparing(Comparator.comparingLong(Hit::line).reversed());

    private final SurfaceSweep sweep;
    private final int most;
    private final Optional<MarginRaster> raster;
    private final PriorityQueue<Hit> kept = new PriorityQueue<>(LEAST_FIRST);
    private double[] excess = new double[0];
    private long points;
    private long inside;
    private long penetrations;
    private Hit worst;

    PointComparison(ProtectionSurface surface, int most, Optional<MarginRaster> raster) {
        sweep = new SurfaceSweep(surface);
        this.raster = raster;
        this.most = most;
    }

    /** One point against the surface. */
    record Hit(String id, long line, double alongM, double rightM, double heightM, double excessM) {
    }

    /**
     * Runs are counted without keeping what each of their points says; only those with penetrations, or for a raster all, are gone through
     * once more.
     */
    @Override
    public void accept(PointBlock block, int count, long firstLine) {
        if (excess.length < count) {
            excess = new double[count];
        }
        List<SurfaceSweep.Tally> runs = IntStream.range(0, (count + RUN - 1) / RUN).parallel()
                .mapToObj(run -> compare(block, run * RUN, Math.min(count, (run + 1) * RUN))).toList();
        SurfaceSweep.Tally all = runs.stream().reduce(SurfaceSweep.Tally.NONE, SurfaceSweep.Tally::with);
        points += count;
        inside += all.inside();
        penetrations += all.above();
        if (all.worst() >= 0 && (worst == null || all.excessM() > worst.excessM())) {
            worst = hit(block, all.worst(), firstLine, all.excessM());
        }
        for (int run = 0; run < runs.size(); run++) {
            for (int i = run * RUN; isWanted(runs.get(run)) && i < Math.min(count, (run + 1) * RUN); i++) {
                if (excess[i] > 0) {
                    keep(block, i, firstLine);
                }
                if (raster.isPresent() && !Double.isNaN(excess[i])) {
                    raster.get().take(new FramePoint(block.alongM()[i], block.rightM()[i], block.heightM()[i]), -excess[i]);
                }
            }
        }
    }

    private boolean isWanted(SurfaceSweep.Tally tally) {
        return tally.above() > 0 || tally.inside() > 0 && raster.isPresent();
    }

    private SurfaceSweep.Tally compare(PointBlock block, int from, int to) {
        SurfaceSweep.Tally tally = sweep.tally(block.alongM(), block.rightM(), block.heightM(), from, to);
        if (isWanted(tally)) {
            sweep.sweep(block.alongM(), block.rightM(), block.heightM(), from, to, excess);
        }
        return tally;
    }

    private void keep(PointBlock block, int index, long firstLine) {
        if (kept.size() == most) {
            if (excess[index] <= kept.peek().excessM()) {
                return;
            }
            kept.poll();
        }
        kept.add(hit(block, index, firstLine, excess[index]));
    }

    private static Hit hit(PointBlock block, int index, long firstLine, double excessM) {
        return new Hit(block.id(index), firstLine + index, block.alongM()[index], block.rightM()[index], block.heightM()[index], excessM);
    }

    long points() {
        return points;
    }

    long inside() {
        return inside;
    }

    long penetrations() {
        return penetrations;
    }

    Optional<Hit> worst() {
        return Optional.ofNullable(worst);
    }

    List<Hit> worstFirst() {
        List<Hit> hits = new ArrayList<>(kept);
        hits.sort(LEAST_FIRST.reversed());
        return hits;
    }
}
