package slopewright.ui.properties;

import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.swt.widgets.Display;

import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.ui.document.ProjectDocument;

/** Takes the side levels of a runway end from models of the terrain, where an aid or its runway end is shown. */
final class TerrainAction extends Action {

    private Optional<ApproachAid> aid = Optional.empty();

    TerrainAction() {
        super(PropertyTexts.get("sheet.terrain"));
        setEnabled(false);
    }

    /** Says which element is shown. */
    void offer(Optional<Identified> shown) {
        aid = shown.flatMap(TerrainOffer::aid).filter(found -> ProjectDocument.of(found).isPresent());
        setEnabled(aid.isPresent());
    }

    @Override
    public void run() {
        aid.ifPresent(target -> ProjectDocument.of(target).ifPresent(document -> TerrainOffer.ask(Display.getCurrent().getActiveShell(),
                document, target)));
    }
}
