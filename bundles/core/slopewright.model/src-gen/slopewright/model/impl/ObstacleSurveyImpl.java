/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectResolvingEList;

import slopewright.model.ApproachHost;
import slopewright.model.ObstacleSurvey;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Obstacle Survey</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getReachM <em>Reach M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getHalfWidthM <em>Half Width M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getHosts <em>Hosts</em>}</li>
 *   <li>{@link slopewright.model.impl.ObstacleSurveyImpl#getAllRound <em>All Round</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ObstacleSurveyImpl extends NamedImpl implements ObstacleSurvey {
	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final String DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected String date = DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getReachM() <em>Reach M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReachM()
	 * @generated
	 * @ordered
	 */
	protected static final Double REACH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReachM() <em>Reach M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReachM()
	 * @generated
	 * @ordered
	 */
	protected Double reachM = REACH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getHalfWidthM() <em>Half Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHalfWidthM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HALF_WIDTH_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHalfWidthM() <em>Half Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHalfWidthM()
	 * @generated
	 * @ordered
	 */
	protected Double halfWidthM = HALF_WIDTH_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getHorizontalAccuracyM() <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HORIZONTAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHorizontalAccuracyM() <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double horizontalAccuracyM = HORIZONTAL_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double VERTICAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double verticalAccuracyM = VERTICAL_ACCURACY_M_EDEFAULT;

	/**
	 * The cached value of the '{@link #getHosts() <em>Hosts</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHosts()
	 * @generated
	 * @ordered
	 */
	protected EList<ApproachHost> hosts;

	/**
	 * The default value of the '{@link #getAllRound() <em>All Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAllRound()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean ALL_ROUND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAllRound() <em>All Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAllRound()
	 * @generated
	 * @ordered
	 */
	protected Boolean allRound = ALL_ROUND_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ObstacleSurveyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.OBSTACLE_SURVEY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(String newDate) {
		String oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getReachM() {
		return reachM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReachM(Double newReachM) {
		Double oldReachM = reachM;
		reachM = newReachM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__REACH_M, oldReachM, reachM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHalfWidthM() {
		return halfWidthM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHalfWidthM(Double newHalfWidthM) {
		Double oldHalfWidthM = halfWidthM;
		halfWidthM = newHalfWidthM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__HALF_WIDTH_M, oldHalfWidthM, halfWidthM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHorizontalAccuracyM() {
		return horizontalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHorizontalAccuracyM(Double newHorizontalAccuracyM) {
		Double oldHorizontalAccuracyM = horizontalAccuracyM;
		horizontalAccuracyM = newHorizontalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M, oldHorizontalAccuracyM, horizontalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getVerticalAccuracyM() {
		return verticalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVerticalAccuracyM(Double newVerticalAccuracyM) {
		Double oldVerticalAccuracyM = verticalAccuracyM;
		verticalAccuracyM = newVerticalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__VERTICAL_ACCURACY_M, oldVerticalAccuracyM, verticalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ApproachHost> getHosts() {
		if (hosts == null) {
			hosts = new EObjectResolvingEList<ApproachHost>(ApproachHost.class, this, SlopewrightPackage.OBSTACLE_SURVEY__HOSTS);
		}
		return hosts;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getAllRound() {
		return allRound;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAllRound(Boolean newAllRound) {
		Boolean oldAllRound = allRound;
		allRound = newAllRound;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.OBSTACLE_SURVEY__ALL_ROUND, oldAllRound, allRound));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.OBSTACLE_SURVEY__DATE:
				return getDate();
			case SlopewrightPackage.OBSTACLE_SURVEY__SOURCE:
				return getSource();
			case SlopewrightPackage.OBSTACLE_SURVEY__REACH_M:
				return getReachM();
			case SlopewrightPackage.OBSTACLE_SURVEY__HALF_WIDTH_M:
				return getHalfWidthM();
			case SlopewrightPackage.OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M:
				return getHorizontalAccuracyM();
			case SlopewrightPackage.OBSTACLE_SURVEY__VERTICAL_ACCURACY_M:
				return getVerticalAccuracyM();
			case SlopewrightPackage.OBSTACLE_SURVEY__HOSTS:
				return getHosts();
			case SlopewrightPackage.OBSTACLE_SURVEY__ALL_ROUND:
				return getAllRound();
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
			case SlopewrightPackage.OBSTACLE_SURVEY__DATE:
				setDate((String)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__SOURCE:
				setSource((String)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__REACH_M:
				setReachM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__HALF_WIDTH_M:
				setHalfWidthM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M:
				setHorizontalAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__HOSTS:
				getHosts().clear();
				getHosts().addAll((Collection<? extends ApproachHost>)newValue);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__ALL_ROUND:
				setAllRound((Boolean)newValue);
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
			case SlopewrightPackage.OBSTACLE_SURVEY__DATE:
				setDate(DATE_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__REACH_M:
				setReachM(REACH_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__HALF_WIDTH_M:
				setHalfWidthM(HALF_WIDTH_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M:
				setHorizontalAccuracyM(HORIZONTAL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM(VERTICAL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__HOSTS:
				getHosts().clear();
				return;
			case SlopewrightPackage.OBSTACLE_SURVEY__ALL_ROUND:
				setAllRound(ALL_ROUND_EDEFAULT);
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
			case SlopewrightPackage.OBSTACLE_SURVEY__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
			case SlopewrightPackage.OBSTACLE_SURVEY__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case SlopewrightPackage.OBSTACLE_SURVEY__REACH_M:
				return REACH_M_EDEFAULT == null ? reachM != null : !REACH_M_EDEFAULT.equals(reachM);
			case SlopewrightPackage.OBSTACLE_SURVEY__HALF_WIDTH_M:
				return HALF_WIDTH_M_EDEFAULT == null ? halfWidthM != null : !HALF_WIDTH_M_EDEFAULT.equals(halfWidthM);
			case SlopewrightPackage.OBSTACLE_SURVEY__HORIZONTAL_ACCURACY_M:
				return HORIZONTAL_ACCURACY_M_EDEFAULT == null ? horizontalAccuracyM != null : !HORIZONTAL_ACCURACY_M_EDEFAULT.equals(horizontalAccuracyM);
			case SlopewrightPackage.OBSTACLE_SURVEY__VERTICAL_ACCURACY_M:
				return VERTICAL_ACCURACY_M_EDEFAULT == null ? verticalAccuracyM != null : !VERTICAL_ACCURACY_M_EDEFAULT.equals(verticalAccuracyM);
			case SlopewrightPackage.OBSTACLE_SURVEY__HOSTS:
				return hosts != null && !hosts.isEmpty();
			case SlopewrightPackage.OBSTACLE_SURVEY__ALL_ROUND:
				return ALL_ROUND_EDEFAULT == null ? allRound != null : !ALL_ROUND_EDEFAULT.equals(allRound);
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
		result.append(" (date: ");
		result.append(date);
		result.append(", source: ");
		result.append(source);
		result.append(", reachM: ");
		result.append(reachM);
		result.append(", halfWidthM: ");
		result.append(halfWidthM);
		result.append(", horizontalAccuracyM: ");
		result.append(horizontalAccuracyM);
		result.append(", verticalAccuracyM: ");
		result.append(verticalAccuracyM);
		result.append(", allRound: ");
		result.append(allRound);
		result.append(')');
		return result.toString();
	}

} //ObstacleSurveyImpl
