/** Every public name of the engine, sorted by folder, one line each. */
export type * from "./answer/answer";
export { sectionOf } from "./antenna/sectionOf";
export type { PortableSolution } from "./chain/portableSolution";
export { adoptSolution, openRequests, solvePortable } from "./chain/portableSolution";
export type { SolutionMemory } from "./chain/solutionMemory";
export { createSolutionMemory } from "./chain/solutionMemory";
export type { SolveRequest } from "./chain/solveRequest";
export { requestKey, unknownsAsked } from "./chain/solveRequest";
export type { KnownBraid } from "./conductors/braidGeometry";
export { braidAngle, braidCoverage, coverageOfFill, fillOfCoverage, knownBraid } from "./conductors/braidGeometry";
export { braidResistance, braidSurfaceFactor } from "./conductors/braidSurface";
export { corrugationFactor } from "./conductors/corrugation";
export { metalSources, plating, platingThickness, tinned } from "./conductors/metals";
export { metalAt, resistivityRatio, statedTemperature } from "./conductors/metalTemperature";
export { roundConductorImpedance } from "./conductors/roundConductor";
export type { ShieldedInput } from "./conductors/shieldedConductor";
export { shieldedConductor, usualBraid } from "./conductors/shieldedConductor";
export type { BraidModel } from "./conductors/shieldImpedances";
export { braidModels, shieldImpedances, transferImpedance } from "./conductors/shieldImpedances";
export { skinDepth, solidWireImpedance, surfaceResistance } from "./conductors/solidWire";
export type { StrandOptions } from "./conductors/strandedConductor";
export { strandedConductor } from "./conductors/strandedConductor";
export { airPermittivity } from "./dielectrics/airPermittivity";
export type { CableDielectric } from "./dielectrics/cableDielectric";
export { lossTangentOf, relativePermittivity } from "./dielectrics/complexPermittivity";
export type { SpacerForm } from "./dielectrics/foam";
export { airWithSpacers, foamed } from "./dielectrics/foam";
export type { LossPointFit } from "./dielectrics/lossPoints";
export { fitLossPoints } from "./dielectrics/lossPoints";
export { cableDielectric, cableDielectrics } from "./dielectrics/materials";
export type { MixtureSpread } from "./dielectrics/mixture";
export { depolarisation, foamSpread, gasFraction, gasFractionOfVelocity, mixture } from "./dielectrics/mixture";
export type { DirtyWater } from "./dielectrics/wetDielectric";
export { soaked, waterDielectric } from "./dielectrics/wetDielectric";
export type { FarField } from "./fields/farField";
export { farField } from "./fields/farField";
export { gain, gainInDecibels, radiationIntensity } from "./fields/gain";
export { gainError } from "./fields/gainError";
export type { GroundPlace, GroundWave } from "./fields/groundWave";
export { groundWaveField } from "./fields/groundWave";
export { flatAttenuation } from "./fields/groundWaveFlat";
export { groundWaveOfMonopole } from "./fields/groundWaveMonopole";
export { earthRadius, radiusForUsualAir } from "./fields/groundWaveSphere";
export { elevationLobes } from "./fields/lobes";
export type { NearField } from "./fields/nearField";
export { nearField, nearFieldSampler } from "./fields/nearField";
export type { PowerAccount } from "./fields/powerAccount";
export { powerAccount } from "./fields/powerAccount";
export type { Direction } from "./fields/strongestDirection";
export { strongestDirection } from "./fields/strongestDirection";
export type { Reflection } from "./ground/reflection";
export { reflection } from "./ground/reflection";
export { complexPermittivity, penetrationDepth } from "./ground/soilMedium";
export { water } from "./ground/water";
export type { BoundedStore } from "./kept/boundedStore";
export { createBoundedStore } from "./kept/boundedStore";
export { chooseKernels, chosenKernels } from "./kernels/chosen";
export type { Kernels } from "./kernels/door";
export { referenceKernels } from "./kernels/reference/referenceKernels";
export type { PortState } from "./lines/alongLine";
export { alongLine, inputImpedance, lineLoss, netPower } from "./lines/alongLine";
export type { AttenuationParts } from "./lines/attenuationParts";
export { attenuationParts } from "./lines/attenuationParts";
export { cableMetals } from "./lines/cableMaterials";
export type { SweptConstants } from "./lines/constantsOver";
export { lineConstantsOver } from "./lines/constantsOver";
export type { LossFit } from "./lines/dataSheetLine";
export { fitLoss } from "./lines/dataSheetLine";
export type { SheetFinding } from "./lines/fitFindings";
export { examineDataSheet, impliedImpedance } from "./lines/fitFindings";
export type { MeasuredLine } from "./lines/fromOpenAndShort";
export { lineFromOpenAndShort } from "./lines/fromOpenAndShort";
export type { LineConstants } from "./lines/lineConstants";
export { decibelsPerNeper, fromImmittance, lineConstants, matchedLoss } from "./lines/lineConstants";
export type { LineFacts } from "./lines/lineFacts";
export { lineFacts, lineSide } from "./lines/lineFacts";
export type * from "./lines/lineModel";
export { lineAtTemperature } from "./lines/lineTemperature";
export type { RadiationLoss } from "./lines/radiationLoss";
export { radiationLoss } from "./lines/radiationLoss";
export {
  meterMayShow,
  powerWaveReflection,
  reflectionOfSwr,
  returnLoss,
  swr,
  voltageReflection,
} from "./lines/reflection";
export type { OutsideCircuit, ShieldCoupling } from "./lines/shieldCoupling";
export { comparedOutside, shieldCoupling } from "./lines/shieldCoupling";
export {
  conductorLoss,
  impedanceOfRatio,
  meansOf,
  ratioOfGreatestPower,
  ratioOfGreatestVoltage,
  ratioOfImpedance,
  ratioOfLeastLoss,
} from "./lines/study/coaxialRatios";
export {
  impedanceOfPair,
  pairOfGreatestPower,
  pairOfGreatestVoltage,
  pairOfLeastLoss,
  ratioOfPair,
} from "./lines/study/pairRatios";
export type { StudyInput, StudyPoint } from "./lines/study/studyPoint";
export { studyPoint } from "./lines/study/studyPoint";
export type { CutOff } from "./lines/te11";
export { coaxialCutOff, greatestFrequency, te11Root } from "./lines/te11";
export { twistedPairRule, twistLength } from "./lines/twistedPairLine";
export type { WetCable } from "./lines/wetCoaxialLine";
export { wetted } from "./lines/wetCoaxialLine";
export type { WetPair, WetSurface } from "./lines/wetPair";
export { wettedPair } from "./lines/wetPair";
export { chainOver, chainSize } from "./networks/chainOver";
export type { StubMatch, TwoElementMatch } from "./networks/closedMatches";
export { quarterWaveBetween, shuntStubMatches, twoElementMatches, twoElementQ } from "./networks/closedMatches";
export { partTwoPort } from "./networks/partTwoPort";
export type { TwoPort } from "./networks/twoPort";
export { galacticNoise, manMadeNoise, noiseClasses } from "./noise/externalNoise";
export { behind, decibelsOf, factorOf } from "./noise/systemNoise";
export type { Complex } from "./numerics/complex";
export type { EchoLattice, EchoRequest } from "./pulses/echoes";
export { echoesToSettle, echoLattice, sumOfWaves } from "./pulses/echoes";
export type { Film, FilmRequest } from "./pulses/film";
export { film } from "./pulses/film";
export type { SteppedLine } from "./pulses/steppedLine";
export { bendExactAt, steppedLine } from "./pulses/steppedLine";
export type { Termination } from "./pulses/termination";
export { openEnd, resistor, shortedEnd } from "./pulses/termination";
export {
  decibels,
  degrees,
  fixedNumber,
  megahertz,
  metres,
  ohms,
  plainNumber,
  significantNumber,
  swrText,
  watts,
  wholeWatts,
  withPrefix,
} from "./quantity/format";
export type * from "./quantity/quantity";
export { between, exactly, isQuantity, isUncertain, within } from "./quantity/quantity";
export type * from "./questions/common/question";
export { questionListings } from "./questions/listings";
export { loadableQuestions, loadQuestion } from "./questions/loading";
export { findQuestion, questions } from "./questions/registry";
export { findStarter, starters } from "./starters/registry";
export type { Feeding, Starter } from "./starters/starter";
export type * from "./station/antennaDescription";
export type * from "./station/path";
export type * from "./station/place";
export type * from "./station/problem";
export { layersAt } from "./station/soilAtFrequency";
export type * from "./station/station";
export { coronaOnsetField, gapBreakdown, paschenVoltage, uniformFieldVoltage } from "./stress/airBreakdown";
export type { ConnectorClass } from "./stress/connectors";
export { connectorClass, connectorClasses, connectorPower } from "./stress/connectors";
export type { VoltageLimit } from "./stress/lineVoltage";
export { decidingLimit, lineVoltageLimits } from "./stress/lineVoltage";
export type { AirState } from "./stress/standardAir";
export { gapReference, peekReference, relativeDensity, standardAir } from "./stress/standardAir";
export { greatestAlong, squaresAt, standingWave } from "./stress/standingWave";
export { steadyTemperatures, timesToReach } from "./stress/steadyHeat";
export type { Site as HeatSite } from "./stress/surroundings";
export { leavingOf } from "./stress/surroundings";
export type { ThermalLine } from "./stress/thermalLine";
export { thermalLine } from "./stress/thermalLine";
export type { AntennaSolution } from "./wires/antennaSolution";
export { coarseTwin } from "./wires/coarseTwin";
export type { DrivenAntenna } from "./wires/driveAntenna";
export { driveAntenna } from "./wires/driveAntenna";
export type { Refinement } from "./wires/refinement";
export { timesFiner } from "./wires/refinement";
export { solveAntenna } from "./wires/solveAntenna";
export type * from "./wires/structure";
export { validateStructure } from "./wires/validateStructure";
export type { WireCurrent } from "./wires/wireCurrents";
export { wireCurrents } from "./wires/wireCurrents";
export { decibelsPerSUnit } from "./words/sUnits";
