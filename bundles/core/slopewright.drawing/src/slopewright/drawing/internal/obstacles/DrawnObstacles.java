package slopewright.drawing.internal.obstacles;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.siting.SitingException;

/** Everything that stands around an aid, as it was compared with its obstacle surface. Nothing is compared here. */
public final class DrawnObstacles {

    private static final Comparator<DrawnObstacle> WORST_FIRST = Comparator.comparingDouble(DrawnObstacle::marginM)
            .thenComparingDouble(obstacle -> Math.abs(obstacle.extent().offsetM()));

    private final DrawnAid drawn;
    private final Optional<SurfaceComparison> comparison;
    private final Optional<ObstacleComparison> governing;
    private final List<DrawnObstacle> worstFirst;
    private final List<DrawnBlock> blocks;

    /** Names what is kept with the surroundings: the extents of all obstacles, which no layout changes. */
    private enum Kept {
        EXTENTS
    }

    /**
     * An obstacle of which a place is known, but no top.
     *
     * @param id    id of the element
     * @param label its name
     * @param place where it stands, at the height of the origin
     */
    public record Topless(String id, String label, FramePoint place) {
    }

    private DrawnObstacles(DrawnAid drawn) {
        this.drawn = drawn;
        comparison = drawn.comparison();
        governing = comparison.flatMap(SurfaceComparison::governing);
        Map<Object, ObstacleComparison> inside = new IdentityHashMap<>();
        comparison.ifPresent(found -> found.inside().forEach(compared -> inside.put(compared.element(), compared)));
        Surroundings around = drawn.surroundings();
        List<ObstacleField.Placed> placed = around.obstacles().placed();
        List<Extent> extents = around.keep(Kept.EXTENTS, () -> placed.stream().map(obstacle -> Extent.of(obstacle.shape())).toList());
        List<DrawnObstacle> all = new ArrayList<>(placed.size());
        for (int i = 0; i < placed.size(); i++) {
            all.add(new DrawnObstacle(placed.get(i), extents.get(i), Optional.ofNullable(inside.get(placed.get(i).obstacle()))));
        }
        all.sort(WORST_FIRST);
        worstFirst = List.copyOf(all);
        Optional<ProtectionSurface> surface = comparison.map(SurfaceComparison::surface);
        blocks = around.blocks().stream().map(block -> DrawnBlock.of(block.block(), block.points(),
                Optional.ofNullable(inside.get(block.block())), surface)).toList();
    }

    /** Reads what stands around an aid. */
    public static DrawnObstacles of(DrawnAid drawn) {
        return new DrawnObstacles(drawn);
    }

    /** Returns the comparison with the obstacle surface, empty where there is none. */
    public Optional<SurfaceComparison> comparison() {
        return comparison;
    }

    /** Returns what stands highest against the surface, whatever shields it; empty where nothing lies within. */
    public Optional<ObstacleComparison> governing() {
        return governing;
    }

    /** Returns whether an element is the governing one. */
    public boolean isGoverning(Optional<ObstacleComparison> compared) {
        return compared.isPresent() && governing.isPresent() && compared.get() == governing.get();
    }

    /**
     * Returns the obstacles that have a place, those that matter most first: by their margin, then, beside the surface, by their distance
     * from the centre line.
     */
    public List<DrawnObstacle> worstFirst() {
        return worstFirst;
    }

    /** Returns the blocks of survey points. */
    public List<DrawnBlock> blocks() {
        return blocks;
    }

    /** Returns what could not be compared, with the reason. */
    public List<Uncompared> uncompared() {
        return drawn.surroundings().uncompared();
    }

    /** Returns the obstacles of which a place is known, but no top: for each its first place. */
    public List<Topless> topless() {
        List<Topless> found = new ArrayList<>();
        for (Uncompared uncompared : uncompared()) {
            if (uncompared.element() instanceof Obstacle obstacle) {
                place(obstacle).ifPresent(place -> found.add(new Topless(String.valueOf(obstacle.getId()), uncompared.label(), place)));
            }
        }
        return found;
    }

    private Optional<FramePoint> place(Obstacle obstacle) {
        for (Place place : obstacle.getPlaces()) {
            try {
                return Optional.of(drawn.frame().toFrame(place, drawn.frame().originElevationM()));
            } catch (SitingException e) {
                // a place without coordinates can be drawn nowhere; the obstacle is still listed in words
                continue;
            }
        }
        return Optional.empty();
    }
}
