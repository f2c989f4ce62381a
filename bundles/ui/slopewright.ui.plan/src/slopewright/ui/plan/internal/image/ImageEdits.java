package slopewright.ui.plan.internal.image;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;

import slopewright.drawing.scene.ScenePoint;
import slopewright.edit.AddChild;
import slopewright.edit.Compound;
import slopewright.edit.RecordedEdit;
import slopewright.edit.SetAttribute;
import slopewright.model.BackgroundImage;
import slopewright.model.Place;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.io.ProjectPicture;
import slopewright.siting.SitingException;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;

/** The edits that lay a picture under a plan and scale it. */
final class ImageEdits {

    private static final String USUAL_REFERENCE = "WGS84";

    private final PlanContext context;

    ImageEdits(PlanContext context) {
        this.context = context;
    }

    /** Returns the coordinate reference of the project. */
    String reference() {
        String reference = context.project().getAerodrome().getCoordinateReference();
        return reference == null ? USUAL_REFERENCE : reference.strip().toUpperCase(Locale.ROOT);
    }

    /** Returns whether places are typed in latitude and longitude. */
    boolean isGeographic() {
        return reference().equals(USUAL_REFERENCE);
    }

    /**
     * Lays a picture under the plan as one edit, with its place where its tags say it in the project's coordinate reference. A file from
     * elsewhere is copied beside the project.
     */
    BackgroundImage add(Path project, Path file, Picture picture, Optional<GeoTags> tags) throws IOException {
        BackgroundImage image = SlopewrightFactory.eINSTANCE.createBackgroundImage();
        image.setName(String.valueOf(file.getFileName()));
        ProjectPicture.name(image, project, file);
        if (tags.isPresent() && refusal(tags).isEmpty()) {
            image.setFirstColumnPx(0.0);
            image.setFirstRowPx(0.0);
            image.setFirstPlace(place(tags.get().eastM(0, 0), tags.get().northM(0, 0)));
            image.setSecondColumnPx((double) picture.widthPx());
            image.setSecondRowPx((double) picture.heightPx());
            image.setSecondPlace(place(tags.get().eastM(picture.widthPx(), picture.heightPx()),
                    tags.get().northM(picture.widthPx(), picture.heightPx())));
        }
        perform(AddChild.of(context.project().getAerodrome(), Literals.AERODROME__BACKGROUND_IMAGES, image));
        return image;
    }

    /** Returns why the tags of a picture do not place it, empty where they do or there are none. */
    String refusal(Optional<GeoTags> tags) {
        if (tags.isEmpty()) {
            return "";
        }
        Optional<String> named = tags.get().epsg().map(code -> "EPSG:" + code);
        if (named.isEmpty()) {
            return Messages.get("image.geo-none");
        }
        if (!named.get().equals(reference())) {
            return Messages.get("image.geo-other", named.get(), reference());
        }
        return tags.get().isEven() ? "" : Messages.get("image.geo-stretched");
    }

    private void perform(RecordedEdit edit) {
        context.diagram().viewer().getEditDomain().getCommandStack().execute(new HistoryCommand(edit));
    }

    /**
     * Makes a place of what was typed.
     *
     * @param first  latitude or east
     * @param second longitude or north
     * @throws IllegalArgumentException where no such place lies on the plane
     */
    Place place(double first, double second) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        if (isGeographic()) {
            place.setLatitudeDeg(first);
            place.setLongitudeDeg(second);
        } else {
            place.setEastM(first);
            place.setNorthM(second);
        }
        try {
            context.plane().orElseThrow().toPlane(place);
        } catch (SitingException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        return place;
    }

    /** Returns the edit that scales a picture by two points. */
    RecordedEdit scale(BackgroundImage image, List<ScenePoint> pixels, List<Place> places) {
        List<RecordedEdit> edits = new ArrayList<>();
        point(edits, image, pixels.get(0), Literals.BACKGROUND_IMAGE__FIRST_COLUMN_PX, Literals.BACKGROUND_IMAGE__FIRST_ROW_PX);
        point(edits, image, pixels.get(1), Literals.BACKGROUND_IMAGE__SECOND_COLUMN_PX, Literals.BACKGROUND_IMAGE__SECOND_ROW_PX);
        place(edits, image, Literals.BACKGROUND_IMAGE__FIRST_PLACE, places.get(0));
        place(edits, image, Literals.BACKGROUND_IMAGE__SECOND_PLACE, places.get(1));
        return Compound.of("Scale picture", edits);
    }

    private static void point(List<RecordedEdit> edits, BackgroundImage image, ScenePoint pixel, EAttribute column, EAttribute row) {
        edits.add(SetAttribute.of(image, column, Math.round(pixel.x() * 10) / 10.0));
        edits.add(SetAttribute.of(image, row, Math.round(pixel.y() * 10) / 10.0));
    }

    private static void place(List<RecordedEdit> edits, BackgroundImage image, EReference reference, Place place) {
        edits.add(AddChild.of(image, reference, place));
    }
}
