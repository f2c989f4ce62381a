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
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.ApproachType;
import slopewright.model.GlidePathAid;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Approach Host</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ApproachHostImpl#getDesignator <em>Designator</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachHostImpl#getDesiredSlopeDeg <em>Desired Slope Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachHostImpl#getApproachType <em>Approach Type</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachHostImpl#getGlidePath <em>Glide Path</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachHostImpl#getRegularGroups <em>Regular Groups</em>}</li>
 *   <li>{@link slopewright.model.impl.ApproachHostImpl#getAids <em>Aids</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class ApproachHostImpl extends NamedImpl implements ApproachHost {
	/**
	 * The default value of the '{@link #getDesignator() <em>Designator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignator()
	 * @generated
	 * @ordered
	 */
	protected static final String DESIGNATOR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesignator() <em>Designator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesignator()
	 * @generated
	 * @ordered
	 */
	protected String designator = DESIGNATOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getDesiredSlopeDeg() <em>Desired Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesiredSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double DESIRED_SLOPE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDesiredSlopeDeg() <em>Desired Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDesiredSlopeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double desiredSlopeDeg = DESIRED_SLOPE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getApproachType() <em>Approach Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApproachType()
	 * @generated
	 * @ordered
	 */
	protected static final ApproachType APPROACH_TYPE_EDEFAULT = ApproachType.NOT_STATED;

	/**
	 * The cached value of the '{@link #getApproachType() <em>Approach Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApproachType()
	 * @generated
	 * @ordered
	 */
	protected ApproachType approachType = APPROACH_TYPE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getGlidePath() <em>Glide Path</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlidePath()
	 * @generated
	 * @ordered
	 */
	protected GlidePathAid glidePath;

	/**
	 * The cached value of the '{@link #getRegularGroups() <em>Regular Groups</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRegularGroups()
	 * @generated
	 * @ordered
	 */
	protected EList<AeroplaneGroup> regularGroups;

	/**
	 * The cached value of the '{@link #getAids() <em>Aids</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAids()
	 * @generated
	 * @ordered
	 */
	protected EList<ApproachAid> aids;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ApproachHostImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.APPROACH_HOST;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDesignator() {
		return designator;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignator(String newDesignator) {
		String oldDesignator = designator;
		designator = newDesignator;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_HOST__DESIGNATOR, oldDesignator, designator));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDesiredSlopeDeg() {
		return desiredSlopeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesiredSlopeDeg(Double newDesiredSlopeDeg) {
		Double oldDesiredSlopeDeg = desiredSlopeDeg;
		desiredSlopeDeg = newDesiredSlopeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_HOST__DESIRED_SLOPE_DEG, oldDesiredSlopeDeg, desiredSlopeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ApproachType getApproachType() {
		return approachType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApproachType(ApproachType newApproachType) {
		ApproachType oldApproachType = approachType;
		approachType = newApproachType == null ? APPROACH_TYPE_EDEFAULT : newApproachType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_HOST__APPROACH_TYPE, oldApproachType, approachType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlidePathAid getGlidePath() {
		return glidePath;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetGlidePath(GlidePathAid newGlidePath, NotificationChain msgs) {
		GlidePathAid oldGlidePath = glidePath;
		glidePath = newGlidePath;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_HOST__GLIDE_PATH, oldGlidePath, newGlidePath);
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
	public void setGlidePath(GlidePathAid newGlidePath) {
		if (newGlidePath != glidePath) {
			NotificationChain msgs = null;
			if (glidePath != null)
				msgs = ((InternalEObject)glidePath).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.APPROACH_HOST__GLIDE_PATH, null, msgs);
			if (newGlidePath != null)
				msgs = ((InternalEObject)newGlidePath).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.APPROACH_HOST__GLIDE_PATH, null, msgs);
			msgs = basicSetGlidePath(newGlidePath, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.APPROACH_HOST__GLIDE_PATH, newGlidePath, newGlidePath));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AeroplaneGroup> getRegularGroups() {
		if (regularGroups == null) {
			regularGroups = new EObjectResolvingEList<AeroplaneGroup>(AeroplaneGroup.class, this, SlopewrightPackage.APPROACH_HOST__REGULAR_GROUPS);
		}
		return regularGroups;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ApproachAid> getAids() {
		if (aids == null) {
			aids = new EObjectContainmentEList<ApproachAid>(ApproachAid.class, this, SlopewrightPackage.APPROACH_HOST__AIDS);
		}
		return aids;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.APPROACH_HOST__GLIDE_PATH:
				return basicSetGlidePath(null, msgs);
			case SlopewrightPackage.APPROACH_HOST__AIDS:
				return ((InternalEList<?>)getAids()).basicRemove(otherEnd, msgs);
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
			case SlopewrightPackage.APPROACH_HOST__DESIGNATOR:
				return getDesignator();
			case SlopewrightPackage.APPROACH_HOST__DESIRED_SLOPE_DEG:
				return getDesiredSlopeDeg();
			case SlopewrightPackage.APPROACH_HOST__APPROACH_TYPE:
				return getApproachType();
			case SlopewrightPackage.APPROACH_HOST__GLIDE_PATH:
				return getGlidePath();
			case SlopewrightPackage.APPROACH_HOST__REGULAR_GROUPS:
				return getRegularGroups();
			case SlopewrightPackage.APPROACH_HOST__AIDS:
				return getAids();
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
			case SlopewrightPackage.APPROACH_HOST__DESIGNATOR:
				setDesignator((String)newValue);
				return;
			case SlopewrightPackage.APPROACH_HOST__DESIRED_SLOPE_DEG:
				setDesiredSlopeDeg((Double)newValue);
				return;
			case SlopewrightPackage.APPROACH_HOST__APPROACH_TYPE:
				setApproachType((ApproachType)newValue);
				return;
			case SlopewrightPackage.APPROACH_HOST__GLIDE_PATH:
				setGlidePath((GlidePathAid)newValue);
				return;
			case SlopewrightPackage.APPROACH_HOST__REGULAR_GROUPS:
				getRegularGroups().clear();
				getRegularGroups().addAll((Collection<? extends AeroplaneGroup>)newValue);
				return;
			case SlopewrightPackage.APPROACH_HOST__AIDS:
				getAids().clear();
				getAids().addAll((Collection<? extends ApproachAid>)newValue);
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
			case SlopewrightPackage.APPROACH_HOST__DESIGNATOR:
				setDesignator(DESIGNATOR_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_HOST__DESIRED_SLOPE_DEG:
				setDesiredSlopeDeg(DESIRED_SLOPE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_HOST__APPROACH_TYPE:
				setApproachType(APPROACH_TYPE_EDEFAULT);
				return;
			case SlopewrightPackage.APPROACH_HOST__GLIDE_PATH:
				setGlidePath((GlidePathAid)null);
				return;
			case SlopewrightPackage.APPROACH_HOST__REGULAR_GROUPS:
				getRegularGroups().clear();
				return;
			case SlopewrightPackage.APPROACH_HOST__AIDS:
				getAids().clear();
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
			case SlopewrightPackage.APPROACH_HOST__DESIGNATOR:
				return DESIGNATOR_EDEFAULT == null ? designator != null : !DESIGNATOR_EDEFAULT.equals(designator);
			case SlopewrightPackage.APPROACH_HOST__DESIRED_SLOPE_DEG:
				return DESIRED_SLOPE_DEG_EDEFAULT == null ? desiredSlopeDeg != null : !DESIRED_SLOPE_DEG_EDEFAULT.equals(desiredSlopeDeg);
			case SlopewrightPackage.APPROACH_HOST__APPROACH_TYPE:
				return approachType != APPROACH_TYPE_EDEFAULT;
			case SlopewrightPackage.APPROACH_HOST__GLIDE_PATH:
				return glidePath != null;
			case SlopewrightPackage.APPROACH_HOST__REGULAR_GROUPS:
				return regularGroups != null && !regularGroups.isEmpty();
			case SlopewrightPackage.APPROACH_HOST__AIDS:
				return aids != null && !aids.isEmpty();
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
		result.append(" (designator: ");
		result.append(designator);
		result.append(", desiredSlopeDeg: ");
		result.append(desiredSlopeDeg);
		result.append(", approachType: ");
		result.append(approachType);
		result.append(')');
		return result.toString();
	}

} //ApproachHostImpl
