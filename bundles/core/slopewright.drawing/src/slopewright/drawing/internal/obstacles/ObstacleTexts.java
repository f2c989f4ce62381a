package slopewright.drawing.internal.obstacles;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.ElementNames;

/** What a drawing says about obstacles. */
public final class ObstacleTexts {

    private static final int MOST_NAMED = 6;

    private final DrawnAid drawn;
    private final DrawnObstacles obstacles;

    /** Prepares the texts of a drawing. */
    public ObstacleTexts(DrawnAid drawn, DrawnObstacles obstacles) {
        this.drawn = drawn;
        this.obstacles = obstacles;
    }

    /** Returns what stands beside an obstacle in a plan: name, height, and what it does to the surface. */
    public String plan(DrawnObstacle obstacle) {
        return write(heading(obstacle.label(), obstacle.extent().topM()), state(obstacle.compared()));
    }

    /** Returns what stands beside an obstacle in a section: name, height, offset, and what it does to the surface. */
    public String section(DrawnObstacle obstacle, boolean hasSurface) {
        List<Argument> parts = new ArrayList<>(List.of(heading(obstacle.label(), obstacle.extent().topM())));
        double offset = obstacle.extent().offsetM();
        if (offset != 0) {
            parts.add(Message.of(offset < 0 ? "drawing.left" : "drawing.right", Words.dm(Math.abs(offset))));
        }
        parts.addAll(hasSurface && !obstacle.isInside() ? List.of(Message.of("drawing.beside")) : state(obstacle.compared()));
        return join(parts);
    }

    /** Returns what stands beside the governing point of a block: names, height, and what it does to the surface. */
    public String governingPoint(DrawnBlock block, ObstacleComparison compared) {
        return write(Message.of("drawing.obstacle", point(block, compared), Words.dm(compared.worst().point().heightM())),
                state(Optional.of(compared)));
    }

    /** Returns what stands beside an obstacle without a top. */
    public String topless(DrawnObstacles.Topless topless) {
        return drawn.say("drawing.topless", Words.name(topless.label()));
    }

    private static Message heading(String label, double topM) {
        return Message.of("drawing.obstacle", Words.name(label), Words.dm(topM));
    }

    private static Message point(DrawnBlock block, ObstacleComparison compared) {
        return Message.of("drawing.block-point", ElementNames.of(block.block()),
                Words.name(compared.block().map(ObstacleComparison.BlockCount::point).orElse("")));
    }

    private static List<Argument> state(Optional<ObstacleComparison> compared) {
        List<Argument> parts = new ArrayList<>();
        compared.filter(ObstacleComparison::isPenetrating).ifPresent(found -> {
            parts.add(Message.of("drawing.through", Words.margin(found.worst().excessM())));
            if (found.shielding().isBacked()) {
                parts.add(Message.of("drawing.shielded", Words.name(found.shielding().by())));
            }
        });
        return parts;
    }

    private String write(Message heading, List<Argument> state) {
        List<Argument> parts = new ArrayList<>(List.of(heading));
        parts.addAll(state);
        return join(parts);
    }

    private String join(List<Argument> parts) {
        return String.join(", ", parts.stream().map(drawn.language()::write).toList());
    }

    /**
     * Returns what a drawing says under it: what governs, how many points a block has above the surface, and what was not compared.
     */
    public List<String> captions() {
        List<String> lines = new ArrayList<>();
        obstacles.comparison().ifPresent(found -> lines.add(drawn.language().render(judgement(found))));
        for (DrawnBlock block : obstacles.blocks()) {
            ObstacleComparison.BlockCount count = block.compared().flatMap(ObstacleComparison::block)
                    .orElse(new ObstacleComparison.BlockCount(block.count(), 0, 0, ""));
            lines.add(drawn.say(count.inside() == 0 ? "drawing.block-outside" : "drawing.block",
                    ElementNames.of(block.block()), Words.count(count.points()), Words.count(count.inside()),
                    Words.count(count.above())));
        }
        uncompared().ifPresent(lines::add);
        return lines;
    }

    private Message judgement(SurfaceComparison found) {
        if (found.isUnsurveyed() && found.uncompared().isEmpty()) {
            return Message.of("drawing.no-survey");
        }
        if (obstacles.governing().isEmpty()) {
            return Message.of("drawing.nothing-inside", Words.count(found.surveyed()));
        }
        ObstacleComparison governing = obstacles.governing().get();
        Argument name = obstacles.blocks().stream().filter(block -> block.block() == governing.element()).findFirst()
                .<Argument>map(block -> point(block, governing)).orElseGet(() -> Words.name(governing.label()));
        return Message.of(governing.isPenetrating() ? "drawing.governing-above" : "drawing.governing-below", name,
                Words.margin(Math.abs(governing.marginM())), Words.wholeM(-governing.worst().point().alongM()), drawn.origin());
    }

    /** Returns what was not compared and why, empty where everything was. */
    public Optional<String> uncompared() {
        List<Uncompared> all = obstacles.comparison().map(SurfaceComparison::uncompared).orElseGet(obstacles::uncompared);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(drawn.say("drawing.not-compared", Words.listed(all.stream().map(Uncompared::reason).toList(), MOST_NAMED)));
    }
}
