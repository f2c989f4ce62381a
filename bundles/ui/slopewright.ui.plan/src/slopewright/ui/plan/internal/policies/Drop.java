package slopewright.ui.plan.internal.policies;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.RecordedEdit;
import slopewright.model.Identified;
import slopewright.ui.diagram.figures.ReadoutFigure.Line;
import slopewright.ui.plan.internal.figures.Marks;

/**
 * Where a drag would leave an element.
 *
 * @param <T>   the type of the element
 * @param place tells this drop from others of the same drag
 * @param by    how far it went, for people
 * @param lines what else is said of it, beside the verdict of the rules
 * @param ghost draws it where it would be
 * @param at    where that is said, in the scene
 * @param edit  the edit that makes it so, of the element or of its copy in another project
 */
record Drop<T extends Identified>(List<?> place, String by, List<Line> lines, Consumer<Marks> ghost, ScenePoint at,
        Function<T, RecordedEdit> edit) {
}
