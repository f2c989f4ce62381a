package slopewright.drawing.internal.obstacles;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

import slopewright.drawing.internal.layout.FrameCut;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.geometry.FramePoint;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.ElementNames;

/**
 * What is entered as standing there and a drawing does not show, with the reason. What it shows is read from the marks within its frame, so
 * that nothing is left out without a word, whatever the drawing did.
 */
public final class OmittedObstacles {

    private static final int MOST_NAMED = 5;

    private final DrawnAid drawn;
    private final DrawnObstacles obstacles;
    private final Leaving leaving;
    private final Set<String> seen = new HashSet<>();

    /**
     * How a drawing leaves out what it does not show.
     *
     * @param together ids of obstacles that it shows together with others, without marks of their own
     * @param beside   whether an obstacle that is not seen stands too far beside the approach; all others stand outside the part shown
     * @param besideM  from how far on that is, metres
     * @param part     the part of space that it shows
     */
    public record Leaving(Set<String> together, Predicate<DrawnObstacle> beside, double besideM, Part part) {
    }

    /** The part of space that a drawing shows. */
    @FunctionalInterface
    public interface Part {

        /** Returns whether a survey point can be seen. */
        boolean holds(double alongM, double rightM, double heightM);
    }

    private OmittedObstacles(DrawnAid drawn, DrawnObstacles obstacles, Leaving leaving) {
        this.drawn = drawn;
        this.obstacles = obstacles;
        this.leaving = leaving;
        seen.addAll(leaving.together());
    }

    /** Returns a drawing of obstacles that says under it which of them it does not show. */
    public static Scene told(Scene scene, DrawnAid drawn, DrawnObstacles obstacles, Leaving leaving) {
        OmittedObstacles omitted = new OmittedObstacles(drawn, obstacles, leaving);
        omitted.see(scene);
        Scene told = scene;
        for (String line : omitted.lines()) {
            told = told.with(line);
        }
        return told;
    }

    /** Returns a drawing of something else that says so, where there are obstacles. */
    public static Scene untold(Scene scene, DrawnAid drawn) {
        return counted(scene, drawn, "drawing.omitted.all");
    }

    /** Returns a drawing that names the obstacles that decide and draws none, and says so. */
    public static Scene byName(Scene scene, DrawnAid drawn) {
        return counted(scene, drawn, "drawing.omitted.by-name");
    }

    private static Scene counted(Scene scene, DrawnAid drawn, String key) {
        long count = drawn.surroundings().count() + drawn.surroundings().uncompared().size();
        return count == 0 ? scene : scene.with(drawn.say(key, Words.count(count)));
    }

    private void see(Scene scene) {
        FrameCut frame = new FrameCut(scene);
        for (Mark mark : scene.marks()) {
            boolean within = mark instanceof Mark.Path path ? !frame.cut(path).isEmpty()
                    : frame.holds(mark instanceof Mark.Disc disc ? disc.centre() : ((Mark.Label) mark).at());
            if (within && !mark.elementId().isEmpty()) {
                seen.add(mark.elementId());
            }
        }
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        List<DrawnObstacle> left = obstacles.worstFirst().stream().filter(obstacle -> !seen.contains(obstacle.id())).toList();
        List<Argument> outside = new ArrayList<>(obstacles.topless().stream().filter(topless -> !seen.contains(topless.id()))
                .<Argument>map(topless -> Message.of("drawing.omitted.topless", Words.name(topless.label()))).toList());
        left.stream().filter(leaving.beside().negate()).forEach(obstacle -> outside.add(named(obstacle)));
        add(lines, "drawing.omitted.outside", outside);
        add(lines, "drawing.omitted.beside", left.stream().filter(leaving.beside()).map(OmittedObstacles::named).toList(),
                Words.wholeM(leaving.besideM()));
        Set<String> placed = new HashSet<>(obstacles.topless().stream().map(DrawnObstacles.Topless::id).toList());
        add(lines, "drawing.omitted.no-place", obstacles.uncompared().stream()
                .filter(one -> !placed.contains(String.valueOf(one.element().getId()))).map(OmittedObstacles::named).toList());
        obstacles.blocks().forEach(block -> points(block, lines));
        return lines;
    }

    private void add(List<String> lines, String key, List<Argument> names, Argument... more) {
        if (!names.isEmpty()) {
            List<Argument> arguments = new ArrayList<>(List.of(Words.listed(names, MOST_NAMED)));
            arguments.addAll(List.of(more));
            lines.add(drawn.say(key, arguments.toArray(Argument[]::new)));
        }
    }

    private static Argument named(DrawnObstacle obstacle) {
        Argument name = Words.name(obstacle.label());
        return obstacle.isThrough() ? Message.of("drawing.omitted.through", name)
                : obstacle.isInside() ? Message.of("drawing.omitted.inside", name) : name;
    }

    private static Argument named(Uncompared uncompared) {
        return Words.name(uncompared.label());
    }

    private void points(DrawnBlock block, List<String> lines) {
        int left = 0;
        for (int i = 0; i < block.count(); i++) {
            left += leaving.part().holds(block.places().alongM()[i], block.places().rightM()[i], block.places().heightM()[i]) ? 0 : 1;
        }
        if (left > 0) {
            long above = block.above().stream().filter(this::isOutside).count();
            lines.add(drawn.say("drawing.omitted.points", ElementNames.of(block.block()), Words.count(left),
                    Words.count(above)));
        }
    }

    private boolean isOutside(FramePoint point) {
        return !leaving.part().holds(point.alongM(), point.rightM(), point.heightM());
    }
}
