package slopewright.ui.review.internal.measured;

import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.evaluation.asbuilt.SettingTolerance;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.ui.Images;
import slopewright.ui.MessageTexts;
import slopewright.ui.review.internal.Messages;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** The columns of the table of measured units. */
enum MeasuredColumn {

    /** Name of the unit. */
    UNIT(60, null, false),
    /** Planned setting. */
    PLANNED(136, Literals.LIGHT_UNIT__SETTING_DEG, false),
    /** Measured setting. */
    MEASURED(148, Literals.MEASURED_UNIT__SETTING_DEG, true),
    /** Difference with its direction. */
    DIFFERENCE(132, null, false),
    /** Tolerance. */
    TOLERANCE(88, null, false),
    /** Verdict by shape and word. */
    VERDICT(130, null, false),
    /** Planned level of the lens. */
    LEVEL_PLANNED(110, Literals.LIGHT_UNIT__LENS_ELEVATION_M, false),
    /** Measured level of the lens. */
    LEVEL(124, Literals.MEASURED_UNIT__LENS_ELEVATION_M, true),
    /** Planned place along the runway. */
    ALONG_PLANNED(118, Literals.LIGHT_UNIT__ALONG_M, false),
    /** Measured place along the runway. */
    ALONG(130, Literals.MEASURED_UNIT__ALONG_M, true),
    /** Planned place to the side. */
    RIGHT_PLANNED(112, Literals.LIGHT_UNIT__RIGHT_M, false),
    /** Measured place to the side. */
    RIGHT(126, Literals.MEASURED_UNIT__RIGHT_M, true),
    /** With what it was measured. */
    INSTRUMENT(120, Literals.MEASURED_UNIT__INSTRUMENT, true),
    /** Who measured. */
    PERSON(100, Literals.MEASURED_UNIT__PERSON, true),
    /** When. */
    DATE(92, Literals.MEASURED_UNIT__DATE, true);

    private final int width;
    private final EAttribute attribute;
    private final boolean editable;

    MeasuredColumn(int width, EAttribute attribute, boolean editable) {
        this.width = width;
        this.attribute = attribute;
        this.editable = editable;
    }

    String title() {
        return Messages.get("measured.column." + name().toLowerCase(Locale.ROOT));
    }

    int width() {
        return width;
    }

    /** Returns the attribute of the measured values that can be typed here, empty where nothing can. */
    Optional<EAttribute> typed() {
        return editable ? Optional.of(attribute) : Optional.empty();
    }

    private Optional<Object> value(MeasuredRow row) {
        Optional<? extends EObject> holder = editable ? row.measured() : Optional.of(row.unit());
        return attribute == null ? Optional.empty() : holder.map(source -> source.eGet(attribute));
    }

    /** Returns what it shows. */
    String text(MeasuredRow row, Optional<AsBuilt> built, QuantityFormat format) {
        return switch (this) {
            case UNIT -> String.valueOf(row.unit().getLabel());
            case DIFFERENCE -> row.result().filter(unit -> unit.offMin().isPresent()).map(unit -> difference(unit.offMin().getAsDouble()))
                    .orElse("");
            case TOLERANCE -> built.flatMap(AsBuilt::resetBeyond).or(() -> built.flatMap(AsBuilt::accuracy))
                    .map(allowed -> "± " + format.showWithUnit(allowed.value(), Quantity.MINUTES)).orElse("");
            case VERDICT -> row.result().map(unit -> Messages.get("measured.verdict." + unit.verdict().name())).orElse("");
            default -> value(row).map(found -> found instanceof Double number ? format.showWithUnit(number, quantity()) : found.toString())
                    .orElse("");
        };
    }

    private static String difference(double minutes) {
        double tenths = Math.round(minutes * 10) / 10.0;
        String key = tenths == 0 ? "measured.same" : tenths > 0 ? "measured.high" : "measured.low";
        return Messages.get(key, (tenths > 0 ? "+" : "") + MessageTexts.renderer().fixed(tenths, 1) + "′");
    }

    /** Returns what stands in the cell when it is typed into. */
    String typedText(MeasuredRow row, QuantityFormat format) {
        return value(row).map(found -> found instanceof Double number ? format.show(number, quantity()) : found.toString()).orElse("");
    }

    private Quantity quantity() {
        return Quantity.of(attribute.getName());
    }

    /** Returns the image of the verdict. */
    static Images image(SettingTolerance.Verdict verdict) {
        return switch (verdict) {
            case WITHIN -> Images.MET;
            case OUTSIDE -> Images.TO_CLEAR_UP;
            case SET_AGAIN -> Images.NOT_MET;
            case NOT_MEASURED -> Images.NOT_APPLICABLE;
            case NO_TOLERANCE -> Images.NOTE;
        };
    }
}
