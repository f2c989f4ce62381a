/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.ApproachDirection;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Helipad</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getElevationM <em>Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getFatoLengthM <em>Fato Length M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getFatoWidthM <em>Fato Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getTlofLengthM <em>Tlof Length M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getTlofWidthM <em>Tlof Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getSafetyAreaWidthM <em>Safety Area Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getHoverHeightM <em>Hover Height M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getEyeAboveSkidsM <em>Eye Above Skids M</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getFloating <em>Floating</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getDirections <em>Directions</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getDeckPitchDeg <em>Deck Pitch Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getDeckRollDeg <em>Deck Roll Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getDeckHeadingDeg <em>Deck Heading Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.HelipadImpl#getFatoBearingDeg <em>Fato Bearing Deg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HelipadImpl extends NamedImpl implements Helipad {
	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected Place place;

	/**
	 * The default value of the '{@link #getElevationM() <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElevationM() <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double elevationM = ELEVATION_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getFatoLengthM() <em>Fato Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatoLengthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double FATO_LENGTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFatoLengthM() <em>Fato Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatoLengthM()
	 * @generated
	 * @ordered
	 */
	protected Double fatoLengthM = FATO_LENGTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getFatoWidthM() <em>Fato Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatoWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double FATO_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFatoWidthM() <em>Fato Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatoWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double fatoWidthM = FATO_WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getTlofLengthM() <em>Tlof Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTlofLengthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double TLOF_LENGTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTlofLengthM() <em>Tlof Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTlofLengthM()
	 * @generated
	 * @ordered
	 */
	protected Double tlofLengthM = TLOF_LENGTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getTlofWidthM() <em>Tlof Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTlofWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double TLOF_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTlofWidthM() <em>Tlof Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTlofWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double tlofWidthM = TLOF_WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getSafetyAreaWidthM() <em>Safety Area Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSafetyAreaWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double SAFETY_AREA_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSafetyAreaWidthM() <em>Safety Area Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSafetyAreaWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double safetyAreaWidthM = SAFETY_AREA_WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getHoverHeightM() <em>Hover Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoverHeightM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HOVER_HEIGHT_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHoverHeightM() <em>Hover Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHoverHeightM()
	 * @generated
	 * @ordered
	 */
	protected Double hoverHeightM = HOVER_HEIGHT_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getEyeAboveSkidsM() <em>Eye Above Skids M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEyeAboveSkidsM()
	 * @generated
	 * @ordered
	 */
	protected static final Double EYE_ABOVE_SKIDS_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEyeAboveSkidsM() <em>Eye Above Skids M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEyeAboveSkidsM()
	 * @generated
	 * @ordered
	 */
	protected Double eyeAboveSkidsM = EYE_ABOVE_SKIDS_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getFloating() <em>Floating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloating()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean FLOATING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFloating() <em>Floating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFloating()
	 * @generated
	 * @ordered
	 */
	protected Boolean floating = FLOATING_EDEFAULT;

	/**
	 * The cached value of the '{@link #getDirections() <em>Directions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDirections()
	 * @generated
	 * @ordered
	 */
	protected EList<ApproachDirection> directions;

	/**
	 * The default value of the '{@link #getDeckPitchDeg() <em>Deck Pitch Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeckPitchDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double DECK_PITCH_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeckPitchDeg() <em>Deck Pitch Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeckPitchDeg()
	 * @generated
	 * @ordered
	 */
	protected Double deckPitchDeg = DECK_PITCH_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getDeckRollDeg() <em>Deck Roll Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeckRollDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double DECK_ROLL_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeckRollDeg() <em>Deck Roll Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeckRollDeg()
	 * @generated
	 * @ordered
	 */
	protected Double deckRollDeg = DECK_ROLL_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getDeckHeadingDeg() <em>Deck Heading Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeckHeadingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double DECK_HEADING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDeckHeadingDeg() <em>Deck Heading Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDeckHeadingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double deckHeadingDeg = DECK_HEADING_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getFatoBearingDeg() <em>Fato Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatoBearingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double FATO_BEARING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFatoBearingDeg() <em>Fato Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFatoBearingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double fatoBearingDeg = FATO_BEARING_DEG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HelipadImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.HELIPAD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPlace(Place newPlace, NotificationChain msgs) {
		Place oldPlace = place;
		place = newPlace;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__PLACE, oldPlace, newPlace);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(Place newPlace) {
		if (newPlace != place) {
			NotificationChain msgs = null;
			if (place != null)
				msgs = ((InternalEObject)place).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.HELIPAD__PLACE, null, msgs);
			if (newPlace != null)
				msgs = ((InternalEObject)newPlace).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.HELIPAD__PLACE, null, msgs);
			msgs = basicSetPlace(newPlace, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__PLACE, newPlace, newPlace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getElevationM() {
		return elevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElevationM(Double newElevationM) {
		Double oldElevationM = elevationM;
		elevationM = newElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__ELEVATION_M, oldElevationM, elevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFatoLengthM() {
		return fatoLengthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFatoLengthM(Double newFatoLengthM) {
		Double oldFatoLengthM = fatoLengthM;
		fatoLengthM = newFatoLengthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__FATO_LENGTH_M, oldFatoLengthM, fatoLengthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFatoWidthM() {
		return fatoWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFatoWidthM(Double newFatoWidthM) {
		Double oldFatoWidthM = fatoWidthM;
		fatoWidthM = newFatoWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__FATO_WIDTH_M, oldFatoWidthM, fatoWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTlofLengthM() {
		return tlofLengthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTlofLengthM(Double newTlofLengthM) {
		Double oldTlofLengthM = tlofLengthM;
		tlofLengthM = newTlofLengthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__TLOF_LENGTH_M, oldTlofLengthM, tlofLengthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTlofWidthM() {
		return tlofWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTlofWidthM(Double newTlofWidthM) {
		Double oldTlofWidthM = tlofWidthM;
		tlofWidthM = newTlofWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__TLOF_WIDTH_M, oldTlofWidthM, tlofWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSafetyAreaWidthM() {
		return safetyAreaWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSafetyAreaWidthM(Double newSafetyAreaWidthM) {
		Double oldSafetyAreaWidthM = safetyAreaWidthM;
		safetyAreaWidthM = newSafetyAreaWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__SAFETY_AREA_WIDTH_M, oldSafetyAreaWidthM, safetyAreaWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHoverHeightM() {
		return hoverHeightM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHoverHeightM(Double newHoverHeightM) {
		Double oldHoverHeightM = hoverHeightM;
		hoverHeightM = newHoverHeightM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__HOVER_HEIGHT_M, oldHoverHeightM, hoverHeightM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEyeAboveSkidsM() {
		return eyeAboveSkidsM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEyeAboveSkidsM(Double newEyeAboveSkidsM) {
		Double oldEyeAboveSkidsM = eyeAboveSkidsM;
		eyeAboveSkidsM = newEyeAboveSkidsM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__EYE_ABOVE_SKIDS_M, oldEyeAboveSkidsM, eyeAboveSkidsM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getFloating() {
		return floating;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFloating(Boolean newFloating) {
		Boolean oldFloating = floating;
		floating = newFloating;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__FLOATING, oldFloating, floating));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ApproachDirection> getDirections() {
		if (directions == null) {
			directions = new EObjectContainmentEList<ApproachDirection>(ApproachDirection.class, this, SlopewrightPackage.HELIPAD__DIRECTIONS);
		}
		return directions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDeckPitchDeg() {
		return deckPitchDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeckPitchDeg(Double newDeckPitchDeg) {
		Double oldDeckPitchDeg = deckPitchDeg;
		deckPitchDeg = newDeckPitchDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__DECK_PITCH_DEG, oldDeckPitchDeg, deckPitchDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDeckRollDeg() {
		return deckRollDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeckRollDeg(Double newDeckRollDeg) {
		Double oldDeckRollDeg = deckRollDeg;
		deckRollDeg = newDeckRollDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__DECK_ROLL_DEG, oldDeckRollDeg, deckRollDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDeckHeadingDeg() {
		return deckHeadingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeckHeadingDeg(Double newDeckHeadingDeg) {
		Double oldDeckHeadingDeg = deckHeadingDeg;
		deckHeadingDeg = newDeckHeadingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__DECK_HEADING_DEG, oldDeckHeadingDeg, deckHeadingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFatoBearingDeg() {
		return fatoBearingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFatoBearingDeg(Double newFatoBearingDeg) {
		Double oldFatoBearingDeg = fatoBearingDeg;
		fatoBearingDeg = newFatoBearingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.HELIPAD__FATO_BEARING_DEG, oldFatoBearingDeg, fatoBearingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.HELIPAD__PLACE:
				return basicSetPlace(null, msgs);
			case SlopewrightPackage.HELIPAD__DIRECTIONS:
				return ((InternalEList<?>)getDirections()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.HELIPAD__PLACE:
				return getPlace();
			case SlopewrightPackage.HELIPAD__ELEVATION_M:
				return getElevationM();
			case SlopewrightPackage.HELIPAD__FATO_LENGTH_M:
				return getFatoLengthM();
			case SlopewrightPackage.HELIPAD__FATO_WIDTH_M:
				return getFatoWidthM();
			case SlopewrightPackage.HELIPAD__TLOF_LENGTH_M:
				return getTlofLengthM();
			case SlopewrightPackage.HELIPAD__TLOF_WIDTH_M:
				return getTlofWidthM();
			case SlopewrightPackage.HELIPAD__SAFETY_AREA_WIDTH_M:
				return getSafetyAreaWidthM();
			case SlopewrightPackage.HELIPAD__HOVER_HEIGHT_M:
				return getHoverHeightM();
			case SlopewrightPackage.HELIPAD__EYE_ABOVE_SKIDS_M:
				return getEyeAboveSkidsM();
			case SlopewrightPackage.HELIPAD__FLOATING:
				return getFloating();
			case SlopewrightPackage.HELIPAD__DIRECTIONS:
				return getDirections();
			case SlopewrightPackage.HELIPAD__DECK_PITCH_DEG:
				return getDeckPitchDeg();
			case SlopewrightPackage.HELIPAD__DECK_ROLL_DEG:
				return getDeckRollDeg();
			case SlopewrightPackage.HELIPAD__DECK_HEADING_DEG:
				return getDeckHeadingDeg();
			case SlopewrightPackage.HELIPAD__FATO_BEARING_DEG:
				return getFatoBearingDeg();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.HELIPAD__PLACE:
				setPlace((Place)newValue);
				return;
			case SlopewrightPackage.HELIPAD__ELEVATION_M:
				setElevationM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__FATO_LENGTH_M:
				setFatoLengthM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__FATO_WIDTH_M:
				setFatoWidthM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__TLOF_LENGTH_M:
				setTlofLengthM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__TLOF_WIDTH_M:
				setTlofWidthM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__SAFETY_AREA_WIDTH_M:
				setSafetyAreaWidthM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__HOVER_HEIGHT_M:
				setHoverHeightM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__EYE_ABOVE_SKIDS_M:
				setEyeAboveSkidsM((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__FLOATING:
				setFloating((Boolean)newValue);
				return;
			case SlopewrightPackage.HELIPAD__DIRECTIONS:
				getDirections().clear();
				getDirections().addAll((Collection<? extends ApproachDirection>)newValue);
				return;
			case SlopewrightPackage.HELIPAD__DECK_PITCH_DEG:
				setDeckPitchDeg((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__DECK_ROLL_DEG:
				setDeckRollDeg((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__DECK_HEADING_DEG:
				setDeckHeadingDeg((Double)newValue);
				return;
			case SlopewrightPackage.HELIPAD__FATO_BEARING_DEG:
				setFatoBearingDeg((Double)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.HELIPAD__PLACE:
				setPlace((Place)null);
				return;
			case SlopewrightPackage.HELIPAD__ELEVATION_M:
				setElevationM(ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__FATO_LENGTH_M:
				setFatoLengthM(FATO_LENGTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__FATO_WIDTH_M:
				setFatoWidthM(FATO_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__TLOF_LENGTH_M:
				setTlofLengthM(TLOF_LENGTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__TLOF_WIDTH_M:
				setTlofWidthM(TLOF_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__SAFETY_AREA_WIDTH_M:
				setSafetyAreaWidthM(SAFETY_AREA_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__HOVER_HEIGHT_M:
				setHoverHeightM(HOVER_HEIGHT_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__EYE_ABOVE_SKIDS_M:
				setEyeAboveSkidsM(EYE_ABOVE_SKIDS_M_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__FLOATING:
				setFloating(FLOATING_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__DIRECTIONS:
				getDirections().clear();
				return;
			case SlopewrightPackage.HELIPAD__DECK_PITCH_DEG:
				setDeckPitchDeg(DECK_PITCH_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__DECK_ROLL_DEG:
				setDeckRollDeg(DECK_ROLL_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__DECK_HEADING_DEG:
				setDeckHeadingDeg(DECK_HEADING_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.HELIPAD__FATO_BEARING_DEG:
				setFatoBearingDeg(FATO_BEARING_DEG_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.HELIPAD__PLACE:
				return place != null;
			case SlopewrightPackage.HELIPAD__ELEVATION_M:
				return ELEVATION_M_EDEFAULT == null ? elevationM != null : !ELEVATION_M_EDEFAULT.equals(elevationM);
			case SlopewrightPackage.HELIPAD__FATO_LENGTH_M:
				return FATO_LENGTH_M_EDEFAULT == null ? fatoLengthM != null : !FATO_LENGTH_M_EDEFAULT.equals(fatoLengthM);
			case SlopewrightPackage.HELIPAD__FATO_WIDTH_M:
				return FATO_WIDTH_M_EDEFAULT == null ? fatoWidthM != null : !FATO_WIDTH_M_EDEFAULT.equals(fatoWidthM);
			case SlopewrightPackage.HELIPAD__TLOF_LENGTH_M:
				return TLOF_LENGTH_M_EDEFAULT == null ? tlofLengthM != null : !TLOF_LENGTH_M_EDEFAULT.equals(tlofLengthM);
			case SlopewrightPackage.HELIPAD__TLOF_WIDTH_M:
				return TLOF_WIDTH_M_EDEFAULT == null ? tlofWidthM != null : !TLOF_WIDTH_M_EDEFAULT.equals(tlofWidthM);
			case SlopewrightPackage.HELIPAD__SAFETY_AREA_WIDTH_M:
				return SAFETY_AREA_WIDTH_M_EDEFAULT == null ? safetyAreaWidthM != null : !SAFETY_AREA_WIDTH_M_EDEFAULT.equals(safetyAreaWidthM);
			case SlopewrightPackage.HELIPAD__HOVER_HEIGHT_M:
				return HOVER_HEIGHT_M_EDEFAULT == null ? hoverHeightM != null : !HOVER_HEIGHT_M_EDEFAULT.equals(hoverHeightM);
			case SlopewrightPackage.HELIPAD__EYE_ABOVE_SKIDS_M:
				return EYE_ABOVE_SKIDS_M_EDEFAULT == null ? eyeAboveSkidsM != null : !EYE_ABOVE_SKIDS_M_EDEFAULT.equals(eyeAboveSkidsM);
			case SlopewrightPackage.HELIPAD__FLOATING:
				return FLOATING_EDEFAULT == null ? floating != null : !FLOATING_EDEFAULT.equals(floating);
			case SlopewrightPackage.HELIPAD__DIRECTIONS:
				return directions != null && !directions.isEmpty();
			case SlopewrightPackage.HELIPAD__DECK_PITCH_DEG:
				return DECK_PITCH_DEG_EDEFAULT == null ? deckPitchDeg != null : !DECK_PITCH_DEG_EDEFAULT.equals(deckPitchDeg);
			case SlopewrightPackage.HELIPAD__DECK_ROLL_DEG:
				return DECK_ROLL_DEG_EDEFAULT == null ? deckRollDeg != null : !DECK_ROLL_DEG_EDEFAULT.equals(deckRollDeg);
			case SlopewrightPackage.HELIPAD__DECK_HEADING_DEG:
				return DECK_HEADING_DEG_EDEFAULT == null ? deckHeadingDeg != null : !DECK_HEADING_DEG_EDEFAULT.equals(deckHeadingDeg);
			case SlopewrightPackage.HELIPAD__FATO_BEARING_DEG:
				return FATO_BEARING_DEG_EDEFAULT == null ? fatoBearingDeg != null : !FATO_BEARING_DEG_EDEFAULT.equals(fatoBearingDeg);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (elevationM: ");
		result.append(elevationM);
		result.append(", fatoLengthM: ");
		result.append(fatoLengthM);
		result.append(", fatoWidthM: ");
		result.append(fatoWidthM);
		result.append(", tlofLengthM: ");
		result.append(tlofLengthM);
		result.append(", tlofWidthM: ");
		result.append(tlofWidthM);
		result.append(", safetyAreaWidthM: ");
		result.append(safetyAreaWidthM);
		result.append(", hoverHeightM: ");
		result.append(hoverHeightM);
		result.append(", eyeAboveSkidsM: ");
		result.append(eyeAboveSkidsM);
		result.append(", floating: ");
		result.append(floating);
		result.append(", deckPitchDeg: ");
		result.append(deckPitchDeg);
		result.append(", deckRollDeg: ");
		result.append(deckRollDeg);
		result.append(", deckHeadingDeg: ");
		result.append(deckHeadingDeg);
		result.append(", fatoBearingDeg: ");
		result.append(fatoBearingDeg);
		result.append(')');
		return result.toString();
	}

} //HelipadImpl
