package slopewright.ui.profile.internal.section;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Obstacle;
import slopewright.model.util.Ids;
import slopewright.ui.document.ProjectDocument;

/** Leads the crosshair by the keys from one light unit or obstacle in sight to the next along the approach, and selects it. */
public final class SectionRound {

    private final SectionSource source;
    private final SectionCanvas canvas;
    private final Runnable moved;
    private Optional<String> reached = Optional.empty();

    private record Stop(Identified element, ScenePoint top) {
    }

    private SectionRound(SectionSource source, SectionCanvas canvas, Runnable moved) {
        this.source = source;
        this.canvas = canvas;
        this.moved = moved;
    }

    /** Connects the round with the common menus and keys of a view; after each step something is run. */
    public static void install(SectionSource source, SectionCanvas canvas, Runnable moved, IActionBars bars) {
        SectionRound round = new SectionRound(source, canvas, moved);
        bars.setGlobalActionHandler(ActionFactory.NEXT.getId(), round.action(1));
        bars.setGlobalActionHandler(ActionFactory.PREVIOUS.getId(), round.action(-1));
    }

    private Action action(int by) {
        return new Action() {

            @Override
            public void run() {
                source.document().ifPresent(open -> go(open, by));
            }
        };
    }

    private void go(ProjectDocument document, int by) {
        List<Stop> stops = stops(document);
        if (stops.isEmpty()) {
            return;
        }
        List<String> ids = stops.stream().map(stop -> stop.element().getId()).toList();
        int now = reached.map(ids::indexOf).orElse(-1);
        Stop next = stops.get(now < 0 ? by > 0 ? 0 : stops.size() - 1 : Math.floorMod(now + by, stops.size()));
        reached = Optional.ofNullable(next.element().getId());
        canvas.crosshair(Optional.of(new FramePoint(next.top().x(), canvas.eye().map(FramePoint::rightM).orElse(0.0), next.top().y())));
        document.viewState().select(List.of(next.element()));
        moved.run();
    }

    private List<Stop> stops(ProjectDocument document) {
        Map<String, Stop> found = new LinkedHashMap<>();
        for (Mark mark : canvas.marks()) {
            Optional<ScenePoint> top = top(mark);
            if (top.isPresent() && !mark.elementId().isEmpty()) {
                Ids.find(document.project(), mark.elementId()).filter(one -> one instanceof LightUnit || one instanceof Obstacle)
                        .ifPresent(one -> found.merge(mark.elementId(), new Stop(one, top.get()),
                                (known, other) -> known.top().y() >= other.top().y() ? known : other));
            }
        }
        return found.values().stream().sorted(Comparator.comparingDouble(stop -> stop.top().x())).toList();
    }

    private static Optional<ScenePoint> top(Mark mark) {
        return mark instanceof Mark.Path path ? path.points().stream().max(Comparator.comparingDouble(ScenePoint::y))
                : mark instanceof Mark.Disc disc ? Optional.of(disc.centre()) : Optional.empty();
    }
}
