/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.LightColour;
import slopewright.model.LightState;
import slopewright.model.SlopewrightPackage;
import slopewright.model.Transition;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Transition</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.TransitionImpl#getOffsetDeg <em>Offset Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.TransitionImpl#getWidthMinutes <em>Width Minutes</em>}</li>
 *   <li>{@link slopewright.model.impl.TransitionImpl#getBelowColour <em>Below Colour</em>}</li>
 *   <li>{@link slopewright.model.impl.TransitionImpl#getBelowState <em>Below State</em>}</li>
 *   <li>{@link slopewright.model.impl.TransitionImpl#getAboveColour <em>Above Colour</em>}</li>
 *   <li>{@link slopewright.model.impl.TransitionImpl#getAboveState <em>Above State</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TransitionImpl extends IdentifiedImpl implements Transition {
	/**
	 * The default value of the '{@link #getOffsetDeg() <em>Offset Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffsetDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double OFFSET_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOffsetDeg() <em>Offset Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffsetDeg()
	 * @generated
	 * @ordered
	 */
	protected Double offsetDeg = OFFSET_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidthMinutes() <em>Width Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final Double WIDTH_MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWidthMinutes() <em>Width Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMinutes()
	 * @generated
	 * @ordered
	 */
	protected Double widthMinutes = WIDTH_MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getBelowColour() <em>Below Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBelowColour()
	 * @generated
	 * @ordered
	 */
	protected static final LightColour BELOW_COLOUR_EDEFAULT = LightColour.NONE;

	/**
	 * The cached value of the '{@link #getBelowColour() <em>Below Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBelowColour()
	 * @generated
	 * @ordered
	 */
	protected LightColour belowColour = BELOW_COLOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getBelowState() <em>Below State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBelowState()
	 * @generated
	 * @ordered
	 */
	protected static final LightState BELOW_STATE_EDEFAULT = LightState.STEADY;

	/**
	 * The cached value of the '{@link #getBelowState() <em>Below State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBelowState()
	 * @generated
	 * @ordered
	 */
	protected LightState belowState = BELOW_STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAboveColour() <em>Above Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveColour()
	 * @generated
	 * @ordered
	 */
	protected static final LightColour ABOVE_COLOUR_EDEFAULT = LightColour.NONE;

	/**
	 * The cached value of the '{@link #getAboveColour() <em>Above Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveColour()
	 * @generated
	 * @ordered
	 */
	protected LightColour aboveColour = ABOVE_COLOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getAboveState() <em>Above State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveState()
	 * @generated
	 * @ordered
	 */
	protected static final LightState ABOVE_STATE_EDEFAULT = LightState.STEADY;

	/**
	 * The cached value of the '{@link #getAboveState() <em>Above State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveState()
	 * @generated
	 * @ordered
	 */
	protected LightState aboveState = ABOVE_STATE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TransitionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.TRANSITION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOffsetDeg() {
		return offsetDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffsetDeg(Double newOffsetDeg) {
		Double oldOffsetDeg = offsetDeg;
		offsetDeg = newOffsetDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.TRANSITION__OFFSET_DEG, oldOffsetDeg, offsetDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWidthMinutes() {
		return widthMinutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidthMinutes(Double newWidthMinutes) {
		Double oldWidthMinutes = widthMinutes;
		widthMinutes = newWidthMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.TRANSITION__WIDTH_MINUTES, oldWidthMinutes, widthMinutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LightColour getBelowColour() {
		return belowColour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBelowColour(LightColour newBelowColour) {
		LightColour oldBelowColour = belowColour;
		belowColour = newBelowColour == null ? BELOW_COLOUR_EDEFAULT : newBelowColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.TRANSITION__BELOW_COLOUR, oldBelowColour, belowColour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LightState getBelowState() {
		return belowState;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBelowState(LightState newBelowState) {
		LightState oldBelowState = belowState;
		belowState = newBelowState == null ? BELOW_STATE_EDEFAULT : newBelowState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.TRANSITION__BELOW_STATE, oldBelowState, belowState));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LightColour getAboveColour() {
		return aboveColour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAboveColour(LightColour newAboveColour) {
		LightColour oldAboveColour = aboveColour;
		aboveColour = newAboveColour == null ? ABOVE_COLOUR_EDEFAULT : newAboveColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.TRANSITION__ABOVE_COLOUR, oldAboveColour, aboveColour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LightState getAboveState() {
		return aboveState;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAboveState(LightState newAboveState) {
		LightState oldAboveState = aboveState;
		aboveState = newAboveState == null ? ABOVE_STATE_EDEFAULT : newAboveState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.TRANSITION__ABOVE_STATE, oldAboveState, aboveState));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.TRANSITION__OFFSET_DEG:
				return getOffsetDeg();
			case SlopewrightPackage.TRANSITION__WIDTH_MINUTES:
				return getWidthMinutes();
			case SlopewrightPackage.TRANSITION__BELOW_COLOUR:
				return getBelowColour();
			case SlopewrightPackage.TRANSITION__BELOW_STATE:
				return getBelowState();
			case SlopewrightPackage.TRANSITION__ABOVE_COLOUR:
				return getAboveColour();
			case SlopewrightPackage.TRANSITION__ABOVE_STATE:
				return getAboveState();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.TRANSITION__OFFSET_DEG:
				setOffsetDeg((Double)newValue);
				return;
			case SlopewrightPackage.TRANSITION__WIDTH_MINUTES:
				setWidthMinutes((Double)newValue);
				return;
			case SlopewrightPackage.TRANSITION__BELOW_COLOUR:
				setBelowColour((LightColour)newValue);
				return;
			case SlopewrightPackage.TRANSITION__BELOW_STATE:
				setBelowState((LightState)newValue);
				return;
			case SlopewrightPackage.TRANSITION__ABOVE_COLOUR:
				setAboveColour((LightColour)newValue);
				return;
			case SlopewrightPackage.TRANSITION__ABOVE_STATE:
				setAboveState((LightState)newValue);
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
			case SlopewrightPackage.TRANSITION__OFFSET_DEG:
				setOffsetDeg(OFFSET_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.TRANSITION__WIDTH_MINUTES:
				setWidthMinutes(WIDTH_MINUTES_EDEFAULT);
				return;
			case SlopewrightPackage.TRANSITION__BELOW_COLOUR:
				setBelowColour(BELOW_COLOUR_EDEFAULT);
				return;
			case SlopewrightPackage.TRANSITION__BELOW_STATE:
				setBelowState(BELOW_STATE_EDEFAULT);
				return;
			case SlopewrightPackage.TRANSITION__ABOVE_COLOUR:
				setAboveColour(ABOVE_COLOUR_EDEFAULT);
				return;
			case SlopewrightPackage.TRANSITION__ABOVE_STATE:
				setAboveState(ABOVE_STATE_EDEFAULT);
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
			case SlopewrightPackage.TRANSITION__OFFSET_DEG:
				return OFFSET_DEG_EDEFAULT == null ? offsetDeg != null : !OFFSET_DEG_EDEFAULT.equals(offsetDeg);
			case SlopewrightPackage.TRANSITION__WIDTH_MINUTES:
				return WIDTH_MINUTES_EDEFAULT == null ? widthMinutes != null : !WIDTH_MINUTES_EDEFAULT.equals(widthMinutes);
			case SlopewrightPackage.TRANSITION__BELOW_COLOUR:
				return belowColour != BELOW_COLOUR_EDEFAULT;
			case SlopewrightPackage.TRANSITION__BELOW_STATE:
				return belowState != BELOW_STATE_EDEFAULT;
			case SlopewrightPackage.TRANSITION__ABOVE_COLOUR:
				return aboveColour != ABOVE_COLOUR_EDEFAULT;
			case SlopewrightPackage.TRANSITION__ABOVE_STATE:
				return aboveState != ABOVE_STATE_EDEFAULT;
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
		result.append(" (offsetDeg: ");
		result.append(offsetDeg);
		result.append(", widthMinutes: ");
		result.append(widthMinutes);
		result.append(", belowColour: ");
		result.append(belowColour);
		result.append(", belowState: ");
		result.append(belowState);
		result.append(", aboveColour: ");
		result.append(aboveColour);
		result.append(", aboveState: ");
		result.append(aboveState);
		result.append(')');
		return result.toString();
	}

} //TransitionImpl
