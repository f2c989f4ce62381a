/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Aeroplane Group</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.AeroplaneGroup#getStaticCockpitToWheelM <em>Static Cockpit To Wheel M</em>}</li>
 *   <li>{@link slopewright.model.AeroplaneGroup#getEyeToWheelM <em>Eye To Wheel M</em>}</li>
 *   <li>{@link slopewright.model.AeroplaneGroup#getEyeToAntennaM <em>Eye To Antenna M</em>}</li>
 *   <li>{@link slopewright.model.AeroplaneGroup#getSharePercent <em>Share Percent</em>}</li>
 *   <li>{@link slopewright.model.AeroplaneGroup#getLightNonTurbojet <em>Light Non Turbojet</em>}</li>
 *   <li>{@link slopewright.model.AeroplaneGroup#getMaxSlopeDeg <em>Max Slope Deg</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup()
 * @model
 * @generated
 */
public interface AeroplaneGroup extends Named {
	/**
	 * Returns the value of the '<em><b>Static Cockpit To Wheel M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Static Cockpit To Wheel M</em>' attribute.
	 * @see #setStaticCockpitToWheelM(Double)
	 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup_StaticCockpitToWheelM()
	 * @model
	 * @generated
	 */
	Double getStaticCockpitToWheelM();

	/**
	 * Sets the value of the '{@link slopewright.model.AeroplaneGroup#getStaticCockpitToWheelM <em>Static Cockpit To Wheel M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Static Cockpit To Wheel M</em>' attribute.
	 * @see #getStaticCockpitToWheelM()
	 * @generated
	 */
	void setStaticCockpitToWheelM(Double value);

	/**
	 * Returns the value of the '<em><b>Eye To Wheel M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Eye To Wheel M</em>' attribute.
	 * @see #setEyeToWheelM(Double)
	 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup_EyeToWheelM()
	 * @model
	 * @generated
	 */
	Double getEyeToWheelM();

	/**
	 * Sets the value of the '{@link slopewright.model.AeroplaneGroup#getEyeToWheelM <em>Eye To Wheel M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Eye To Wheel M</em>' attribute.
	 * @see #getEyeToWheelM()
	 * @generated
	 */
	void setEyeToWheelM(Double value);

	/**
	 * Returns the value of the '<em><b>Eye To Antenna M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Eye To Antenna M</em>' attribute.
	 * @see #setEyeToAntennaM(Double)
	 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup_EyeToAntennaM()
	 * @model
	 * @generated
	 */
	Double getEyeToAntennaM();

	/**
	 * Sets the value of the '{@link slopewright.model.AeroplaneGroup#getEyeToAntennaM <em>Eye To Antenna M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Eye To Antenna M</em>' attribute.
	 * @see #getEyeToAntennaM()
	 * @generated
	 */
	void setEyeToAntennaM(Double value);

	/**
	 * Returns the value of the '<em><b>Share Percent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Share Percent</em>' attribute.
	 * @see #setSharePercent(Double)
	 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup_SharePercent()
	 * @model
	 * @generated
	 */
	Double getSharePercent();

	/**
	 * Sets the value of the '{@link slopewright.model.AeroplaneGroup#getSharePercent <em>Share Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Share Percent</em>' attribute.
	 * @see #getSharePercent()
	 * @generated
	 */
	void setSharePercent(Double value);

	/**
	 * Returns the value of the '<em><b>Light Non Turbojet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Light Non Turbojet</em>' attribute.
	 * @see #setLightNonTurbojet(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup_LightNonTurbojet()
	 * @model
	 * @generated
	 */
	Boolean getLightNonTurbojet();

	/**
	 * Sets the value of the '{@link slopewright.model.AeroplaneGroup#getLightNonTurbojet <em>Light Non Turbojet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Light Non Turbojet</em>' attribute.
	 * @see #getLightNonTurbojet()
	 * @generated
	 */
	void setLightNonTurbojet(Boolean value);

	/**
	 * Returns the value of the '<em><b>Max Slope Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Max Slope Deg</em>' attribute.
	 * @see #setMaxSlopeDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getAeroplaneGroup_MaxSlopeDeg()
	 * @model
	 * @generated
	 */
	Double getMaxSlopeDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.AeroplaneGroup#getMaxSlopeDeg <em>Max Slope Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Slope Deg</em>' attribute.
	 * @see #getMaxSlopeDeg()
	 * @generated
	 */
	void setMaxSlopeDeg(Double value);

} // AeroplaneGroup
