# mypy: disable-error-code="misc"
from typing import Any, Iterable, Optional, Protocol, overload, Sequence, TypeVar, Union

from numpy.typing import NDArray

from tauten import exercises as exercises
from tauten import plots as plots
from tauten import uncertainty as uncertainty
from tauten._core import AfterRelease as AfterRelease
from tauten._core import AidUse as AidUse
from tauten._core import Arg as Arg
from tauten._core import Band as Band
from tauten._core import BoltGroup as BoltGroup
from tauten._core import Budget as Budget
from tauten._core import Capacity as Capacity
from tauten._core import ChainEnd as ChainEnd
from tauten._core import Chances as Chances
from tauten._core import Clamp as Clamp
from tauten._core import ClampCandidate as ClampCandidate
from tauten._core import ClassLoads as ClassLoads
from tauten._core import ClassMark as ClassMark
from tauten._core import ConditionCase as ConditionCase
from tauten._core import Contribution as Contribution
from tauten._core import CoverageInterval as CoverageInterval
from tauten._core import Curve as Curve
from tauten._core import CurvePoint as CurvePoint
from tauten._core import CurveZone as CurveZone
from tauten._core import Derivation as Derivation
from tauten._core import DiameterLimits as DiameterLimits
from tauten._core import DrillingCandidate as DrillingCandidate
from tauten._core import FacePressure as FacePressure
from tauten._core import Figure as Figure
from tauten._core import Free as Free
from tauten._core import Identification as Identification
from tauten._core import Identified as Identified
from tauten._core import IfHeld as IfHeld
from tauten._core import InService as InService
from tauten._core import Instruction as Instruction
from tauten._core import Learned as Learned
from tauten._core import LoadDiagram as LoadDiagram
from tauten._core import LoadPoint as LoadPoint
from tauten._core import Lognormal as Lognormal
from tauten._core import MethodBand as MethodBand
from tauten._core import ModelLoad as ModelLoad
from tauten._core import MonteCarlo as MonteCarlo
from tauten._core import Notice as Notice
from tauten._core import NutRotation as NutRotation
from tauten._core import Pattern as Pattern
from tauten._core import PatternWay as PatternWay
from tauten._core import PlanStep as PlanStep
from tauten._core import PropertyClass as PropertyClass
from tauten._core import Prying as Prying
from tauten._core import Range as Range
from tauten._core import Reach as Reach
from tauten._core import ResidualClamp as ResidualClamp
from tauten._core import Sobol as Sobol
from tauten._core import SobolIndex as SobolIndex
from tauten._core import Source as Source
from tauten._core import Step as Step
from tauten._core import StepText as StepText
from tauten._core import StopBound as StopBound
from tauten._core import StructuralTurn as StructuralTurn
from tauten._core import Style as Style
from tauten._core import Thread as Thread
from tauten._core import ThreadCondition as ThreadCondition
from tauten._core import ThreadEngagement as ThreadEngagement
from tauten._core import ThreadLimits as ThreadLimits
from tauten._core import TighteningCurve as TighteningCurve
from tauten._core import TighteningPass as TighteningPass
from tauten._core import TighteningSequence as TighteningSequence
from tauten._core import TorqueContribution as TorqueContribution
from tauten._core import Turn as Turn
from tauten._core import TurnJoint as TurnJoint
from tauten._core import TurnLayer as TurnLayer
from tauten._core import TurningEnergy as TurningEnergy
from tauten._errors import DomainWarning as DomainWarning
from tauten._errors import Error as Error
from tauten._errors import ValidityWarning as ValidityWarning
from tauten._explanation import Explanation as Explanation
from tauten._formula import Check as Check
from tauten._formula import Formula as Formula
from tauten._formula import Formulas as Formulas
from tauten._records import BandInUnit as BandInUnit
from tauten._records import to_frame as to_frame

formulas: Formulas

# A DataFrame, structured array or dict of columns: the answer is one of the same kind.
Table = TypeVar("Table")

# One number in SI, text with its unit, or a quantity of Pint.
Quantity = Union[float, str, Any]
Friction = Union[float, str, Iterable[float], Band]

conditions: tuple[str, ...]
heads: tuple[str, ...]
materials: tuple[str, ...]
property_classes: tuple[str, ...]
threads: tuple[str, ...]
__version__: str

def quantity(text: str) -> float: ...
def sheet(job: Any, format: str = ..., time: str = ...) -> str: ...
def property_class(name: Union[str, PropertyClass], diameter: Optional[Quantity] = ...) -> PropertyClass: ...
def thread_condition(key: Union[str, ThreadCondition]) -> ThreadCondition: ...

# ---- Questions: written by src/tools/derived.py, do not edit.
@overload
def identify(
    *,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    bit: Optional[int] = ...,
    worn: Optional[Quantity] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
) -> Identification: ...
@overload
def identify(
    __table: Table,
    *,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    bit: Optional[int] = ...,
    worn: Optional[Quantity] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def thread(
    __table: Optional[Union[str, Thread]] = ...,
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
) -> Thread: ...
@overload
def thread(
    __table: Table,
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def clamp(
    *,
    torque: Quantity,
    specified_condition: Optional[Union[str, ThreadCondition]] = ...,
    name: Optional[str] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    share: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    friction_together: Optional[bool] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Union[str, Sequence[Any]]] = ...,
    torsion: Optional[str] = ...,
    seat_material: Optional[str] = ...,
    nut_class: Optional[str] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
) -> Clamp: ...
@overload
def clamp(
    __table: Table,
    *,
    torque: Optional[Quantity] = ...,
    specified_condition: Optional[Union[str, ThreadCondition]] = ...,
    name: Optional[str] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    share: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    friction_together: Optional[bool] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Union[str, Sequence[Any]]] = ...,
    torsion: Optional[str] = ...,
    seat_material: Optional[str] = ...,
    nut_class: Optional[str] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def torque_for(
    *,
    name: Optional[str] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    share: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    friction_together: Optional[bool] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Union[str, Sequence[Any]]] = ...,
    torsion: Optional[str] = ...,
    seat_material: Optional[str] = ...,
    nut_class: Optional[str] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    clamp_load: Optional[Quantity] = ...,
) -> Clamp: ...
@overload
def torque_for(
    __table: Table,
    *,
    name: Optional[str] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    share: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    friction_together: Optional[bool] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Union[str, Sequence[Any]]] = ...,
    torsion: Optional[str] = ...,
    seat_material: Optional[str] = ...,
    nut_class: Optional[str] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    clamp_load: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def turn(
    *,
    angle: Optional[Quantity] = ...,
    angle_at_handle: Optional[bool] = ...,
    clamp_load: Optional[Quantity] = ...,
    share: Optional[Quantity] = ...,
    utilisation: Optional[Quantity] = ...,
    to_yield: Optional[bool] = ...,
    bars: Optional[Union[str, Sequence[Any]]] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    angle_tolerance: Optional[Quantity] = ...,
    resilience_tolerance: Optional[Quantity] = ...,
    strength_surplus: Optional[Quantity] = ...,
    roughness: Optional[Quantity] = ...,
    load_across: Optional[bool] = ...,
    bolt_warming: Optional[Quantity] = ...,
    plate_warming: Optional[Quantity] = ...,
    creep_share: Optional[Quantity] = ...,
    neighbours: Optional[Quantity] = ...,
    working_load: Optional[Quantity] = ...,
    load_introduction: Optional[Quantity] = ...,
    structural: Optional[bool] = ...,
    k_factor: Optional[Quantity] = ...,
    sloping_faces: Optional[int] = ...,
    name: Optional[str] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    head: Optional[str] = ...,
    kind: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    layers: Optional[Union[str, Sequence[Any]]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    nut_class: Optional[str] = ...,
    nut_height: Optional[Quantity] = ...,
    plate_model: Optional[str] = ...,
    snug_torque: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
) -> Turn: ...
@overload
def turn(
    __table: Table,
    *,
    angle: Optional[Quantity] = ...,
    angle_at_handle: Optional[bool] = ...,
    clamp_load: Optional[Quantity] = ...,
    share: Optional[Quantity] = ...,
    utilisation: Optional[Quantity] = ...,
    to_yield: Optional[bool] = ...,
    bars: Optional[Union[str, Sequence[Any]]] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    angle_tolerance: Optional[Quantity] = ...,
    resilience_tolerance: Optional[Quantity] = ...,
    strength_surplus: Optional[Quantity] = ...,
    roughness: Optional[Quantity] = ...,
    load_across: Optional[bool] = ...,
    bolt_warming: Optional[Quantity] = ...,
    plate_warming: Optional[Quantity] = ...,
    creep_share: Optional[Quantity] = ...,
    neighbours: Optional[Quantity] = ...,
    working_load: Optional[Quantity] = ...,
    load_introduction: Optional[Quantity] = ...,
    structural: Optional[bool] = ...,
    k_factor: Optional[Quantity] = ...,
    sloping_faces: Optional[int] = ...,
    name: Optional[str] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    head: Optional[str] = ...,
    kind: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    layers: Optional[Union[str, Sequence[Any]]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    nut_class: Optional[str] = ...,
    nut_height: Optional[Quantity] = ...,
    plate_model: Optional[str] = ...,
    snug_torque: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def curve(
    *,
    name: Optional[str] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    head: Optional[str] = ...,
    kind: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    layers: Optional[Union[str, Sequence[Any]]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    nut_class: Optional[str] = ...,
    nut_height: Optional[Quantity] = ...,
    plate_model: Optional[str] = ...,
    snug_torque: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    end_angle: Optional[Quantity] = ...,
    points: Optional[int] = ...,
    slope_share: Optional[Quantity] = ...,
) -> TighteningCurve: ...
@overload
def curve(
    __table: Table,
    *,
    name: Optional[str] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    head: Optional[str] = ...,
    kind: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    layers: Optional[Union[str, Sequence[Any]]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    tapped_material: Optional[str] = ...,
    engagement: Optional[Quantity] = ...,
    nut_class: Optional[str] = ...,
    nut_height: Optional[Quantity] = ...,
    plate_model: Optional[str] = ...,
    snug_torque: Optional[Quantity] = ...,
    condition: Optional[Union[str, ThreadCondition]] = ...,
    face_condition: Optional[Union[str, ThreadCondition]] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    end_angle: Optional[Quantity] = ...,
    points: Optional[int] = ...,
    slope_share: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def reach(
    *,
    torque: Optional[Quantity] = ...,
    setting: Optional[Quantity] = ...,
    wrench_length: Optional[Quantity] = ...,
    extensions: Optional[Union[str, Sequence[Any]]] = ...,
    hand_offset: Optional[Quantity] = ...,
    support_share: Optional[Quantity] = ...,
    tilt: Optional[Quantity] = ...,
    universal_joint: Optional[Quantity] = ...,
    multiplier_ratio: Optional[Quantity] = ...,
    multiplier_efficiency: Optional[Quantity] = ...,
    efficiency_range: Optional[Quantity] = ...,
    reaction_arm: Optional[Quantity] = ...,
    bars: Optional[Union[str, Sequence[Any]]] = ...,
    drive_square: Optional[Quantity] = ...,
    wrench_type: Optional[str] = ...,
    wrench_class: Optional[str] = ...,
    scale_low: Optional[Quantity] = ...,
    scale_high: Optional[Quantity] = ...,
    division: Optional[Quantity] = ...,
    hinged_handle: Optional[bool] = ...,
    pipe_on_handle: Optional[bool] = ...,
    tolerance_hand: Optional[Quantity] = ...,
    tolerance_extension: Optional[Quantity] = ...,
    tolerance_extension_angle: Optional[Quantity] = ...,
    tolerance_pull_angle: Optional[Quantity] = ...,
    tolerance_support_share: Optional[Quantity] = ...,
    tolerance_operator: Optional[Quantity] = ...,
) -> Reach: ...
@overload
def reach(
    __table: Table,
    *,
    torque: Optional[Quantity] = ...,
    setting: Optional[Quantity] = ...,
    wrench_length: Optional[Quantity] = ...,
    extensions: Optional[Union[str, Sequence[Any]]] = ...,
    hand_offset: Optional[Quantity] = ...,
    support_share: Optional[Quantity] = ...,
    tilt: Optional[Quantity] = ...,
    universal_joint: Optional[Quantity] = ...,
    multiplier_ratio: Optional[Quantity] = ...,
    multiplier_efficiency: Optional[Quantity] = ...,
    efficiency_range: Optional[Quantity] = ...,
    reaction_arm: Optional[Quantity] = ...,
    bars: Optional[Union[str, Sequence[Any]]] = ...,
    drive_square: Optional[Quantity] = ...,
    wrench_type: Optional[str] = ...,
    wrench_class: Optional[str] = ...,
    scale_low: Optional[Quantity] = ...,
    scale_high: Optional[Quantity] = ...,
    division: Optional[Quantity] = ...,
    hinged_handle: Optional[bool] = ...,
    pipe_on_handle: Optional[bool] = ...,
    tolerance_hand: Optional[Quantity] = ...,
    tolerance_extension: Optional[Quantity] = ...,
    tolerance_extension_angle: Optional[Quantity] = ...,
    tolerance_pull_angle: Optional[Quantity] = ...,
    tolerance_support_share: Optional[Quantity] = ...,
    tolerance_operator: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def free_joint(
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    width_across_flats: Optional[Quantity] = ...,
    bit: Optional[int] = ...,
    rust: Optional[str] = ...,
    limit: Optional[Quantity] = ...,
    drive: Optional[str] = ...,
    loosened: Optional[Union[str, Sequence[Any]]] = ...,
    held: Optional[Quantity] = ...,
    held_untreated: Optional[bool] = ...,
    aids: Optional[Union[str, Sequence[Any]]] = ...,
    surroundings: Optional[Union[str, Sequence[Any]]] = ...,
    quenched: Optional[bool] = ...,
    reused: Optional[bool] = ...,
    preload: Optional[Quantity] = ...,
    years: Optional[Quantity] = ...,
    first_year_loss: Optional[Quantity] = ...,
    corner_loss: Optional[Quantity] = ...,
    drive_clearance: Optional[Quantity] = ...,
    drive_square: Optional[Quantity] = ...,
    handle_length: Optional[Quantity] = ...,
    hand_force: Optional[Quantity] = ...,
    hand_variation: Optional[Quantity] = ...,
    shear_risk: Optional[Quantity] = ...,
    wanted_chance: Optional[Quantity] = ...,
    thread_friction: Optional[Quantity] = ...,
    bearing_friction: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    engaged_length: Optional[Quantity] = ...,
    tapped: Optional[bool] = ...,
    thread_direction: Optional[str] = ...,
    head_height: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    nut_diameter: Optional[Quantity] = ...,
    nut_yield: Optional[Quantity] = ...,
    diameter: Optional[Quantity] = ...,
    pitch: Optional[Quantity] = ...,
    tensile_strength: Optional[Quantity] = ...,
    yield_strength: Optional[Quantity] = ...,
    torsion_ratio: Optional[Quantity] = ...,
    trials: Optional[int] = ...,
    seed: Optional[int] = ...,
    instructions: Optional[bool] = ...,
    jobs: Optional[int] = ...,
) -> Free: ...
@overload
def free_joint(
    __table: Table,
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    width_across_flats: Optional[Quantity] = ...,
    bit: Optional[int] = ...,
    rust: Optional[str] = ...,
    limit: Optional[Quantity] = ...,
    drive: Optional[str] = ...,
    loosened: Optional[Union[str, Sequence[Any]]] = ...,
    held: Optional[Quantity] = ...,
    held_untreated: Optional[bool] = ...,
    aids: Optional[Union[str, Sequence[Any]]] = ...,
    surroundings: Optional[Union[str, Sequence[Any]]] = ...,
    quenched: Optional[bool] = ...,
    reused: Optional[bool] = ...,
    preload: Optional[Quantity] = ...,
    years: Optional[Quantity] = ...,
    first_year_loss: Optional[Quantity] = ...,
    corner_loss: Optional[Quantity] = ...,
    drive_clearance: Optional[Quantity] = ...,
    drive_square: Optional[Quantity] = ...,
    handle_length: Optional[Quantity] = ...,
    hand_force: Optional[Quantity] = ...,
    hand_variation: Optional[Quantity] = ...,
    shear_risk: Optional[Quantity] = ...,
    wanted_chance: Optional[Quantity] = ...,
    thread_friction: Optional[Quantity] = ...,
    bearing_friction: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    engaged_length: Optional[Quantity] = ...,
    tapped: Optional[bool] = ...,
    thread_direction: Optional[str] = ...,
    head_height: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    nut_diameter: Optional[Quantity] = ...,
    nut_yield: Optional[Quantity] = ...,
    diameter: Optional[Quantity] = ...,
    pitch: Optional[Quantity] = ...,
    tensile_strength: Optional[Quantity] = ...,
    yield_strength: Optional[Quantity] = ...,
    torsion_ratio: Optional[Quantity] = ...,
    trials: Optional[int] = ...,
    seed: Optional[int] = ...,
    instructions: Optional[bool] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def pattern(
    __table: Optional[Union[str, Sequence[Any], NDArray[Any]]] = ...,
    *,
    positions: Optional[Union[str, Sequence[Any]]] = ...,
    chords: Optional[Union[str, Sequence[Any]]] = ...,
    edges: Optional[str] = ...,
    name: Optional[str] = ...,
    hole: Optional[Quantity] = ...,
    outside: Optional[Quantity] = ...,
    height: Optional[Quantity] = ...,
    tolerance: Optional[Quantity] = ...,
    on: Optional[Union[str, Sequence[Any]]] = ...,
    flipped: Optional[bool] = ...,
) -> Pattern: ...
@overload
def pattern(
    __table: Table,
    *,
    positions: Optional[Union[str, Sequence[Any]]] = ...,
    chords: Optional[Union[str, Sequence[Any]]] = ...,
    edges: Optional[str] = ...,
    name: Optional[str] = ...,
    hole: Optional[Quantity] = ...,
    outside: Optional[Quantity] = ...,
    height: Optional[Quantity] = ...,
    tolerance: Optional[Quantity] = ...,
    on: Optional[Union[str, Sequence[Any]]] = ...,
    flipped: Optional[bool] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def group(
    __table: Optional[Union[str, Pattern, Sequence[Any], NDArray[Any]]] = ...,
    *,
    positions: Optional[Union[str, Sequence[Any]]] = ...,
    load: Optional[Union[str, Sequence[Any]]] = ...,
    at: Optional[Union[str, Sequence[Any]]] = ...,
    torque: Optional[Quantity] = ...,
    weights: Optional[Union[str, Sequence[Any]]] = ...,
    force: Optional[Quantity] = ...,
    moment: Optional[Union[str, Sequence[Any]]] = ...,
    outline: Optional[Union[str, Sequence[Any]]] = ...,
    outside: Optional[Quantity] = ...,
    worst_clocking: Optional[bool] = ...,
    bolt_area: Optional[Quantity] = ...,
    modular_ratio: Optional[Quantity] = ...,
    model: Optional[str] = ...,
    tension_model: Optional[str] = ...,
    preload: Optional[Quantity] = ...,
    load_factor: Optional[Quantity] = ...,
    friction: Optional[Quantity] = ...,
) -> BoltGroup: ...
@overload
def group(
    __table: Table,
    *,
    positions: Optional[Union[str, Sequence[Any]]] = ...,
    load: Optional[Union[str, Sequence[Any]]] = ...,
    at: Optional[Union[str, Sequence[Any]]] = ...,
    torque: Optional[Quantity] = ...,
    weights: Optional[Union[str, Sequence[Any]]] = ...,
    force: Optional[Quantity] = ...,
    moment: Optional[Union[str, Sequence[Any]]] = ...,
    outline: Optional[Union[str, Sequence[Any]]] = ...,
    outside: Optional[Quantity] = ...,
    worst_clocking: Optional[bool] = ...,
    bolt_area: Optional[Quantity] = ...,
    modular_ratio: Optional[Quantity] = ...,
    model: Optional[str] = ...,
    tension_model: Optional[str] = ...,
    preload: Optional[Quantity] = ...,
    load_factor: Optional[Quantity] = ...,
    friction: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def sequence(
    __table: Optional[Union[int, str, Pattern, Sequence[Any], NDArray[Any]]] = ...,
    *,
    pattern: Optional[Union[str, Sequence[Any]]] = ...,
    method: Optional[str] = ...,
    start: Optional[Union[str, Sequence[Any]]] = ...,
    order: Optional[Union[str, Sequence[Any]]] = ...,
    labels: Optional[Union[str, Sequence[Any]]] = ...,
    at_once: Optional[int] = ...,
    shares: Optional[Union[str, Sequence[Any]]] = ...,
    rounds: Optional[int] = ...,
    most: Optional[Quantity] = ...,
    torque: Optional[Quantity] = ...,
    pressurised: Optional[bool] = ...,
    person: Optional[Union[str, Sequence[Any]]] = ...,
    interaction: Optional[Union[str, Sequence[Any]]] = ...,
    gasket: Optional[str] = ...,
    readings: Optional[Union[str, Sequence[Any]]] = ...,
    load: Optional[Quantity] = ...,
    shortfall: Optional[Quantity] = ...,
    limit: Optional[Quantity] = ...,
    friction_scatter: Optional[Quantity] = ...,
    act_scatter: Optional[Quantity] = ...,
    wrench_scatter: Optional[Quantity] = ...,
    trials: Optional[int] = ...,
    seed: Optional[int] = ...,
) -> TighteningSequence: ...
@overload
def sequence(
    __table: Table,
    *,
    pattern: Optional[Union[str, Sequence[Any]]] = ...,
    method: Optional[str] = ...,
    start: Optional[Union[str, Sequence[Any]]] = ...,
    order: Optional[Union[str, Sequence[Any]]] = ...,
    labels: Optional[Union[str, Sequence[Any]]] = ...,
    at_once: Optional[int] = ...,
    shares: Optional[Union[str, Sequence[Any]]] = ...,
    rounds: Optional[int] = ...,
    most: Optional[Quantity] = ...,
    torque: Optional[Quantity] = ...,
    pressurised: Optional[bool] = ...,
    person: Optional[Union[str, Sequence[Any]]] = ...,
    interaction: Optional[Union[str, Sequence[Any]]] = ...,
    gasket: Optional[str] = ...,
    readings: Optional[Union[str, Sequence[Any]]] = ...,
    load: Optional[Quantity] = ...,
    shortfall: Optional[Quantity] = ...,
    limit: Optional[Quantity] = ...,
    friction_scatter: Optional[Quantity] = ...,
    act_scatter: Optional[Quantity] = ...,
    wrench_scatter: Optional[Quantity] = ...,
    trials: Optional[int] = ...,
    seed: Optional[int] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
@overload
def prying(
    *,
    tributary: Optional[Quantity] = ...,
    effective_length: Optional[Quantity] = ...,
    bolt_to_web: Optional[Quantity] = ...,
    bolt_to_edge: Optional[Quantity] = ...,
    thickness: Optional[Quantity] = ...,
    plate_strength: Optional[Quantity] = ...,
    bolt_strength: Optional[Quantity] = ...,
    bolts: Optional[int] = ...,
    pull: Optional[Quantity] = ...,
    diameter: Optional[Quantity] = ...,
    hole: Optional[Quantity] = ...,
    resistance_factor: Optional[Quantity] = ...,
    washer: Optional[Quantity] = ...,
    elongation_length: Optional[Quantity] = ...,
    bolt_area: Optional[Quantity] = ...,
) -> Prying: ...
@overload
def prying(
    __table: Table,
    *,
    tributary: Optional[Quantity] = ...,
    effective_length: Optional[Quantity] = ...,
    bolt_to_web: Optional[Quantity] = ...,
    bolt_to_edge: Optional[Quantity] = ...,
    thickness: Optional[Quantity] = ...,
    plate_strength: Optional[Quantity] = ...,
    bolt_strength: Optional[Quantity] = ...,
    bolts: Optional[int] = ...,
    pull: Optional[Quantity] = ...,
    diameter: Optional[Quantity] = ...,
    hole: Optional[Quantity] = ...,
    resistance_factor: Optional[Quantity] = ...,
    washer: Optional[Quantity] = ...,
    elongation_length: Optional[Quantity] = ...,
    bolt_area: Optional[Quantity] = ...,
    columns: Optional[Union[str, Sequence[str]]] = ...,
    jobs: Optional[int] = ...,
) -> Table: ...
# ---- End of the questions.

# ---- Formulas: written by src/tools/derived.py, do not edit.

# One number in SI, or text with its unit; or an array of numbers in SI as well.
_Number = Union[float, str]
_Numbers = Union[float, str, NDArray[Any]]

class _Formula(Protocol):
    name: str
    summary: str
    inputs: tuple[Arg, ...]
    output: Arg
    sources: tuple[Source, ...]
    room: str
    ufunc: Any
    def expression(self, notation: str = ..., **inputs: Any) -> str: ...
    def gradient(self, *args: Any, **inputs: Any) -> dict[str, Any]: ...
    def check(self, *args: Any, **inputs: Any) -> Check: ...
    def explain(self, *args: Any, format: str = ..., style: Any = ..., **inputs: Any) -> str: ...

class _triangle_height(_Formula, Protocol):
    """Height of the fundamental triangle.

    pitch P [m] -> triangle_height H [m]
    """
    @overload
    def __call__(self, pitch: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, **options: Any) -> Any: ...

triangle_height: _triangle_height

class _pitch_diameter(_Formula, Protocol):
    """Basic pitch diameter.

    diameter d [m], pitch P [m] -> pitch_diameter d_2 [m]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, **options: Any) -> Any: ...

pitch_diameter: _pitch_diameter

class _minor_diameter(_Formula, Protocol):
    """Basic minor diameter of the nut thread.

    diameter d [m], pitch P [m] -> minor_diameter D_1 [m]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, **options: Any) -> Any: ...

minor_diameter: _minor_diameter

class _root_diameter(_Formula, Protocol):
    """Root diameter of the bolt thread.

    diameter d [m], pitch P [m] -> root_diameter d_3 [m]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, **options: Any) -> Any: ...

root_diameter: _root_diameter

class _minimum_root_diameter(_Formula, Protocol):
    """Minimum root diameter of the bolt thread.

    minimum_pitch_diameter d_2min [m], pitch P [m] -> minimum_root_diameter d_3min [m]
    """
    @overload
    def __call__(self, minimum_pitch_diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, minimum_pitch_diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, minimum_pitch_diameter: Any, pitch: Any, **options: Any) -> Any: ...

minimum_root_diameter: _minimum_root_diameter

class _stress_diameter(_Formula, Protocol):
    """Diameter of the stress area.

    diameter d [m], pitch P [m] -> stress_diameter d_s [m]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, **options: Any) -> Any: ...

stress_diameter: _stress_diameter

class _stress_area(_Formula, Protocol):
    """Nominal stress area.

    diameter d [m], pitch P [m] -> stress_area A_s [m2]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, **options: Any) -> Any: ...

stress_area: _stress_area

class _stress_area_unified(_Formula, Protocol):
    """Stress area of a unified thread.

    diameter d [m], pitch P [m] -> stress_area A_s [m2]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, **options: Any) -> Any: ...

stress_area_unified: _stress_area_unified

class _lead_angle(_Formula, Protocol):
    """Lead angle.

    pitch P [m], pitch_diameter d_2 [m] -> lead_angle phi [rad]
    """
    @overload
    def __call__(self, pitch: _Number, pitch_diameter: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, pitch_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, pitch_diameter: Any, **options: Any) -> Any: ...

lead_angle: _lead_angle

class _load_at_stress(_Formula, Protocol):
    """Load at a given stress in a section.

    stress_area A_s [m2], stress S [Pa] -> load F [N]
    """
    @overload
    def __call__(self, stress_area: _Number, stress: _Number) -> float: ...
    @overload
    def __call__(self, stress_area: _Numbers, stress: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, stress_area: Any, stress: Any, **options: Any) -> Any: ...

load_at_stress: _load_at_stress

class _target_preload(_Formula, Protocol):
    """Preload as a share of proof or tensile load.

    share x [1], stress_area A_s [m2], stress S [Pa] -> preload F_M [N]
    """
    @overload
    def __call__(self, share: _Number, stress_area: _Number, stress: _Number) -> float: ...
    @overload
    def __call__(self, share: _Numbers, stress_area: _Numbers, stress: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, share: Any, stress_area: Any, stress: Any, **options: Any) -> Any: ...

target_preload: _target_preload

class _torsion_yield_torque(_Formula, Protocol):
    """Torque at first yield in torsion.

    shear_strength tau_u [Pa], diameter d [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, diameter: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, diameter: Any, **options: Any) -> Any: ...

torsion_yield_torque: _torsion_yield_torque

class _torsion_plastic_torque(_Formula, Protocol):
    """Torque of the fully plastic section.

    shear_strength tau_u [Pa], diameter d [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, diameter: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, diameter: Any, **options: Any) -> Any: ...

torsion_plastic_torque: _torsion_plastic_torque

class _breaking_torque(_Formula, Protocol):
    """Minimum breaking torque.

    torsion_ratio X [1], tensile_strength R_m [Pa], root_diameter d_3 [m] -> torque M_B [N.m]
    """
    @overload
    def __call__(self, torsion_ratio: _Number, tensile_strength: _Number, root_diameter: _Number) -> float: ...
    @overload
    def __call__(self, torsion_ratio: _Numbers, tensile_strength: _Numbers, root_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torsion_ratio: Any, tensile_strength: Any, root_diameter: Any, **options: Any) -> Any: ...

breaking_torque: _breaking_torque

class _external_strip_area(_Formula, Protocol):
    """Area in which the thread of a bolt strips.

    engaged_length L_e [m], pitch P [m], minor_diameter D_1 [m], pitch_diameter d_2 [m] -> strip_area A_SG [m2]
    """
    @overload
    def __call__(self, engaged_length: _Number, pitch: _Number, minor_diameter: _Number, pitch_diameter: _Number) -> float: ...
    @overload
    def __call__(self, engaged_length: _Numbers, pitch: _Numbers, minor_diameter: _Numbers, pitch_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, engaged_length: Any, pitch: Any, minor_diameter: Any, pitch_diameter: Any, **options: Any) -> Any: ...

external_strip_area: _external_strip_area

class _internal_strip_area(_Formula, Protocol):
    """Area in which the thread of a nut or tapped hole strips.

    engaged_length L_e [m], pitch P [m], diameter d [m], nut_pitch_diameter D_2 [m] -> strip_area A_SGM [m2]
    """
    @overload
    def __call__(self, engaged_length: _Number, pitch: _Number, diameter: _Number, nut_pitch_diameter: _Number) -> float: ...
    @overload
    def __call__(self, engaged_length: _Numbers, pitch: _Numbers, diameter: _Numbers, nut_pitch_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, engaged_length: Any, pitch: Any, diameter: Any, nut_pitch_diameter: Any, **options: Any) -> Any: ...

internal_strip_area: _internal_strip_area

class _strip_strength_ratio(_Formula, Protocol):
    """Strip strength of the internal over that of the external thread.

    internal_shear_strength tau_BM [Pa], internal_area A_SGM [m2], external_shear_strength tau_BS [Pa], external_area A_SG [m2] -> strength_ratio R_S [1]
    """
    @overload
    def __call__(self, internal_shear_strength: _Number, internal_area: _Number, external_shear_strength: _Number, external_area: _Number) -> float: ...
    @overload
    def __call__(self, internal_shear_strength: _Numbers, internal_area: _Numbers, external_shear_strength: _Numbers, external_area: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, internal_shear_strength: Any, internal_area: Any, external_shear_strength: Any, external_area: Any, **options: Any) -> Any: ...

strip_strength_ratio: _strip_strength_ratio

class _nut_dilation_factor(_Formula, Protocol):
    """Strip strength kept by a nut that widens.

    width_ratio s_d [1] -> dilation_factor C_1 [1]
    """
    @overload
    def __call__(self, width_ratio: _Number) -> float: ...
    @overload
    def __call__(self, width_ratio: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_ratio: Any, **options: Any) -> Any: ...

nut_dilation_factor: _nut_dilation_factor

class _bolt_thread_bending_factor(_Formula, Protocol):
    """Effect of thread bending on the strip strength of the bolt.

    strength_ratio R_S [1] -> bending_factor C_2 [1]
    """
    @overload
    def __call__(self, strength_ratio: _Number) -> float: ...
    @overload
    def __call__(self, strength_ratio: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, strength_ratio: Any, **options: Any) -> Any: ...

bolt_thread_bending_factor: _bolt_thread_bending_factor

class _nut_thread_bending_factor(_Formula, Protocol):
    """Effect of thread bending on the strip strength of the nut.

    strength_ratio R_S [1] -> bending_factor C_3 [1]
    """
    @overload
    def __call__(self, strength_ratio: _Number) -> float: ...
    @overload
    def __call__(self, strength_ratio: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, strength_ratio: Any, **options: Any) -> Any: ...

nut_thread_bending_factor: _nut_thread_bending_factor

class _strip_load(_Formula, Protocol):
    """Load at which a thread strips.

    shear_strength tau_u [Pa], strip_area A_SG [m2], dilation_factor C_1 [1], bending_factor C_3 [1] -> load F_mG [N]
    """
    @overload
    def __call__(self, shear_strength: _Number, strip_area: _Number, dilation_factor: _Number, bending_factor: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, strip_area: _Numbers, dilation_factor: _Numbers, bending_factor: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, strip_area: Any, dilation_factor: Any, bending_factor: Any, **options: Any) -> Any: ...

strip_load: _strip_load

class _needed_engagement(_Formula, Protocol):
    """Engagement at which the internal thread carries a load, from the strip area of one pitch.

    load F [N], shear_strength tau_u [Pa], pitch P [m], strip_area A_SG [m2], dilation_factor C_1 [1], bending_factor C_3 [1] -> engaged_length m_ges [m]
    """
    @overload
    def __call__(self, load: _Number, shear_strength: _Number, pitch: _Number, strip_area: _Number, dilation_factor: _Number, bending_factor: _Number) -> float: ...
    @overload
    def __call__(self, load: _Numbers, shear_strength: _Numbers, pitch: _Numbers, strip_area: _Numbers, dilation_factor: _Numbers, bending_factor: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, load: Any, shear_strength: Any, pitch: Any, strip_area: Any, dilation_factor: Any, bending_factor: Any, **options: Any) -> Any: ...

needed_engagement: _needed_engagement

class _bearing_pressure(_Formula, Protocol):
    """Pressure under a head or nut.

    load F [N], outer_diameter d_a [m], inner_diameter d_i [m] -> pressure p [Pa]
    """
    @overload
    def __call__(self, load: _Number, outer_diameter: _Number, inner_diameter: _Number) -> float: ...
    @overload
    def __call__(self, load: _Numbers, outer_diameter: _Numbers, inner_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, load: Any, outer_diameter: Any, inner_diameter: Any, **options: Any) -> Any: ...

bearing_pressure: _bearing_pressure

class _mean_bearing_diameter(_Formula, Protocol):
    """Effective bearing diameter, mean of outer and hole diameter.

    outer_diameter d_a [m], inner_diameter d_i [m] -> bearing_diameter D_Km [m]
    """
    @overload
    def __call__(self, outer_diameter: _Number, inner_diameter: _Number) -> float: ...
    @overload
    def __call__(self, outer_diameter: _Numbers, inner_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, outer_diameter: Any, inner_diameter: Any, **options: Any) -> Any: ...

mean_bearing_diameter: _mean_bearing_diameter

class _uniform_pressure_bearing_diameter(_Formula, Protocol):
    """Effective bearing diameter under uniform pressure.

    outer_diameter d_a [m], inner_diameter d_i [m] -> bearing_diameter D_Km [m]
    """
    @overload
    def __call__(self, outer_diameter: _Number, inner_diameter: _Number) -> float: ...
    @overload
    def __call__(self, outer_diameter: _Numbers, inner_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, outer_diameter: Any, inner_diameter: Any, **options: Any) -> Any: ...

uniform_pressure_bearing_diameter: _uniform_pressure_bearing_diameter

class _thread_lever(_Formula, Protocol):
    """Thread torque per unit of preload (linear form).

    pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1] -> thread_lever a_G [m]
    """
    @overload
    def __call__(self, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, pitch_diameter: Any, thread_friction: Any, **options: Any) -> Any: ...

thread_lever: _thread_lever

class _torque_lever(_Formula, Protocol):
    """Tightening torque per unit of preload (linear form).

    pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> torque_lever a [m]
    """
    @overload
    def __call__(self, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

torque_lever: _torque_lever

class _nut_factor(_Formula, Protocol):
    """Nut factor from friction.

    diameter d [m], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> nut_factor K [1]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

nut_factor: _nut_factor

class _nut_factor_from_test(_Formula, Protocol):
    """Nut factor from a test.

    torque M_A [N.m], preload F_M [N], diameter d [m] -> nut_factor K [1]
    """
    @overload
    def __call__(self, torque: _Number, preload: _Number, diameter: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, preload: _Numbers, diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, preload: Any, diameter: Any, **options: Any) -> Any: ...

nut_factor_from_test: _nut_factor_from_test

class _total_friction(_Formula, Protocol):
    """Total coefficient of friction from a test.

    torque M_A [N.m], preload F_M [N], pitch P [m], pitch_diameter d_2 [m], bearing_diameter D_Km [m] -> total_friction mu_tot [1]
    """
    @overload
    def __call__(self, torque: _Number, preload: _Number, pitch: _Number, pitch_diameter: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, preload: Any, pitch: Any, pitch_diameter: Any, bearing_diameter: Any, **options: Any) -> Any: ...

total_friction: _total_friction

class _thread_friction_from_test(_Formula, Protocol):
    """Thread friction from a test.

    thread_torque M_G [N.m], preload F_M [N], pitch P [m], pitch_diameter d_2 [m] -> thread_friction mu_G [1]
    """
    @overload
    def __call__(self, thread_torque: _Number, preload: _Number, pitch: _Number, pitch_diameter: _Number) -> float: ...
    @overload
    def __call__(self, thread_torque: _Numbers, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, thread_torque: Any, preload: Any, pitch: Any, pitch_diameter: Any, **options: Any) -> Any: ...

thread_friction_from_test: _thread_friction_from_test

class _bearing_friction_from_test(_Formula, Protocol):
    """Bearing friction from a test.

    bearing_torque M_K [N.m], preload F_M [N], bearing_diameter D_Km [m] -> bearing_friction mu_K [1]
    """
    @overload
    def __call__(self, bearing_torque: _Number, preload: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, bearing_torque: _Numbers, preload: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, bearing_torque: Any, preload: Any, bearing_diameter: Any, **options: Any) -> Any: ...

bearing_friction_from_test: _bearing_friction_from_test

class _tightening_torque(_Formula, Protocol):
    """Torque that leaves a given preload (linear form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

tightening_torque: _tightening_torque

class _tightening_torque_exact(_Formula, Protocol):
    """Torque that leaves a given preload (exact form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

tightening_torque_exact: _tightening_torque_exact

class _preload_from_torque(_Formula, Protocol):
    """Preload that a torque leaves (linear form).

    torque M_A [N.m], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> preload F_M [N]
    """
    @overload
    def __call__(self, torque: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

preload_from_torque: _preload_from_torque

class _preload_from_torque_exact(_Formula, Protocol):
    """Preload that a torque leaves (exact form).

    torque M_A [N.m], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> preload F_M [N]
    """
    @overload
    def __call__(self, torque: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

preload_from_torque_exact: _preload_from_torque_exact

class _nut_factor_exact(_Formula, Protocol):
    """Nut factor from friction (exact form).

    diameter d [m], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> nut_factor K [1]
    """
    @overload
    def __call__(self, diameter: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

nut_factor_exact: _nut_factor_exact

class _thread_torque(_Formula, Protocol):
    """Torque in the thread at a preload (linear form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1] -> thread_torque M_G [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, **options: Any) -> Any: ...

thread_torque: _thread_torque

class _thread_torque_exact(_Formula, Protocol):
    """Torque in the thread at a preload (exact form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1] -> thread_torque M_G [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, **options: Any) -> Any: ...

thread_torque_exact: _thread_torque_exact

class _bearing_torque(_Formula, Protocol):
    """Friction torque under the turned head or nut.

    preload F_M [N], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> bearing_torque M_K [N.m]
    """
    @overload
    def __call__(self, preload: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

bearing_torque: _bearing_torque

class _loosening_torque(_Formula, Protocol):
    """Loosening torque of a clean joint (linear form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> loosening_torque M_L [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

loosening_torque: _loosening_torque

class _loosening_torque_exact(_Formula, Protocol):
    """Loosening torque of a clean joint (exact form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> loosening_torque M_L [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

loosening_torque_exact: _loosening_torque_exact

class _screw_torque(_Formula, Protocol):
    """Tightening torque for any flank angle (exact form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], flank_angle alpha [rad], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, flank_angle: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, flank_angle: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, flank_angle: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

screw_torque: _screw_torque

class _screw_loosening_torque(_Formula, Protocol):
    """Loosening torque for any flank angle (exact form).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], flank_angle alpha [rad], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> loosening_torque M_L [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, flank_angle: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, flank_angle: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, flank_angle: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

screw_loosening_torque: _screw_loosening_torque

class _screw_efficiency(_Formula, Protocol):
    """Efficiency of a screw thread.

    pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], flank_angle alpha [rad] -> efficiency eta [1]
    """
    @overload
    def __call__(self, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, flank_angle: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, flank_angle: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, pitch_diameter: Any, thread_friction: Any, flank_angle: Any, **options: Any) -> Any: ...

screw_efficiency: _screw_efficiency

class _pitch_share(_Formula, Protocol):
    """Share of the torque that stretches the bolt.

    pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> pitch_share p [1]
    """
    @overload
    def __call__(self, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

pitch_share: _pitch_share

class _loosening_ratio(_Formula, Protocol):
    """Loosening over tightening torque of a clean joint.

    pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m] -> loosening_ratio T_off/T_on [1]
    """
    @overload
    def __call__(self, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, **options: Any) -> Any: ...

loosening_ratio: _loosening_ratio

class _preload_from_torque_pair(_Formula, Protocol):
    """Preload from tightening and loosening torque.

    torque M_A [N.m], loosening_torque M_L [N.m], pitch P [m] -> preload F_M [N]
    """
    @overload
    def __call__(self, torque: _Number, loosening_torque: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, loosening_torque: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, loosening_torque: Any, pitch: Any, **options: Any) -> Any: ...

preload_from_torque_pair: _preload_from_torque_pair

class _torque_from_nut_factor(_Formula, Protocol):
    """Torque from preload and nut factor.

    preload F_M [N], diameter d [m], nut_factor K [1] -> torque T [N.m]
    """
    @overload
    def __call__(self, preload: _Number, diameter: _Number, nut_factor: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, diameter: _Numbers, nut_factor: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, diameter: Any, nut_factor: Any, **options: Any) -> Any: ...

torque_from_nut_factor: _torque_from_nut_factor

class _preload_from_nut_factor(_Formula, Protocol):
    """Preload from torque and nut factor.

    torque M_A [N.m], diameter d [m], nut_factor K [1] -> preload F_M [N]
    """
    @overload
    def __call__(self, torque: _Number, diameter: _Number, nut_factor: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, diameter: _Numbers, nut_factor: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, diameter: Any, nut_factor: Any, **options: Any) -> Any: ...

preload_from_nut_factor: _preload_from_nut_factor

class _preload_after_friction_change(_Formula, Protocol):
    """Preload after a change of the nut factor.

    preload F_M [N], nut_factor K [1], new_nut_factor K_new [1] -> new_preload F_new [N]
    """
    @overload
    def __call__(self, preload: _Number, nut_factor: _Number, new_nut_factor: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, nut_factor: _Numbers, new_nut_factor: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, nut_factor: Any, new_nut_factor: Any, **options: Any) -> Any: ...

preload_after_friction_change: _preload_after_friction_change

class _setting_with_prevailing(_Formula, Protocol):
    """Wrench torque with a prevailing torque.

    torque M_A [N.m], prevailing_torque M_P [N.m] -> setting M [N.m]
    """
    @overload
    def __call__(self, torque: _Number, prevailing_torque: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, prevailing_torque: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, prevailing_torque: Any, **options: Any) -> Any: ...

setting_with_prevailing: _setting_with_prevailing

class _effective_torque(_Formula, Protocol):
    """Torque that reaches thread and bearing face.

    setting M_S [N.m], wrench_deviation e_W [1], prevailing_torque M_P [N.m], shank_torque M_D [N.m] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, setting: _Number, wrench_deviation: _Number, prevailing_torque: _Number, shank_torque: _Number) -> float: ...
    @overload
    def __call__(self, setting: _Numbers, wrench_deviation: _Numbers, prevailing_torque: _Numbers, shank_torque: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, setting: Any, wrench_deviation: Any, prevailing_torque: Any, shank_torque: Any, **options: Any) -> Any: ...

effective_torque: _effective_torque

class _shank_torsion(_Formula, Protocol):
    """Torque that twists the shank, with a prevailing torque.

    thread_torque M_G [N.m], prevailing_torque M_P [N.m] -> shank_torsion M_T [N.m]
    """
    @overload
    def __call__(self, thread_torque: _Number, prevailing_torque: _Number) -> float: ...
    @overload
    def __call__(self, thread_torque: _Numbers, prevailing_torque: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, thread_torque: Any, prevailing_torque: Any, **options: Any) -> Any: ...

shank_torsion: _shank_torsion

class _assembly_preload(_Formula, Protocol):
    """Preload at a share of yield while tightening (plastic torsion).

    yield_strength R_p0.2 [Pa], utilisation nu [1], pitch P [m], pitch_diameter d_2 [m], stress_diameter d_s [m], thread_friction mu_G [1] -> preload F_M [N]
    """
    @overload
    def __call__(self, yield_strength: _Number, utilisation: _Number, pitch: _Number, pitch_diameter: _Number, stress_diameter: _Number, thread_friction: _Number) -> float: ...
    @overload
    def __call__(self, yield_strength: _Numbers, utilisation: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, stress_diameter: _Numbers, thread_friction: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, yield_strength: Any, utilisation: Any, pitch: Any, pitch_diameter: Any, stress_diameter: Any, thread_friction: Any, **options: Any) -> Any: ...

assembly_preload: _assembly_preload

class _assembly_preload_exact(_Formula, Protocol):
    """Preload at a share of yield while tightening (plastic torsion, exact thread).

    yield_strength R_p0.2 [Pa], utilisation nu [1], pitch P [m], pitch_diameter d_2 [m], stress_diameter d_s [m], thread_friction mu_G [1] -> preload F_M [N]
    """
    @overload
    def __call__(self, yield_strength: _Number, utilisation: _Number, pitch: _Number, pitch_diameter: _Number, stress_diameter: _Number, thread_friction: _Number) -> float: ...
    @overload
    def __call__(self, yield_strength: _Numbers, utilisation: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, stress_diameter: _Numbers, thread_friction: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, yield_strength: Any, utilisation: Any, pitch: Any, pitch_diameter: Any, stress_diameter: Any, thread_friction: Any, **options: Any) -> Any: ...

assembly_preload_exact: _assembly_preload_exact

class _assembly_preload_elastic(_Formula, Protocol):
    """Preload at a share of yield while tightening (elastic torsion).

    yield_strength R_p0.2 [Pa], utilisation nu [1], pitch P [m], pitch_diameter d_2 [m], stress_diameter d_s [m], thread_friction mu_G [1] -> preload F_M [N]
    """
    @overload
    def __call__(self, yield_strength: _Number, utilisation: _Number, pitch: _Number, pitch_diameter: _Number, stress_diameter: _Number, thread_friction: _Number) -> float: ...
    @overload
    def __call__(self, yield_strength: _Numbers, utilisation: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, stress_diameter: _Numbers, thread_friction: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, yield_strength: Any, utilisation: Any, pitch: Any, pitch_diameter: Any, stress_diameter: Any, thread_friction: Any, **options: Any) -> Any: ...

assembly_preload_elastic: _assembly_preload_elastic

class _assembly_stress(_Formula, Protocol):
    """Equivalent stress while tightening (plastic torsion).

    preload F_M [N], thread_torque M_G [N.m], stress_diameter d_s [m] -> stress sigma_red [Pa]
    """
    @overload
    def __call__(self, preload: _Number, thread_torque: _Number, stress_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, thread_torque: _Numbers, stress_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, thread_torque: Any, stress_diameter: Any, **options: Any) -> Any: ...

assembly_stress: _assembly_stress

class _assembly_stress_elastic(_Formula, Protocol):
    """Equivalent stress while tightening (elastic torsion).

    preload F_M [N], thread_torque M_G [N.m], stress_diameter d_s [m] -> stress sigma_red [Pa]
    """
    @overload
    def __call__(self, preload: _Number, thread_torque: _Number, stress_diameter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, thread_torque: _Numbers, stress_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, thread_torque: Any, stress_diameter: Any, **options: Any) -> Any: ...

assembly_stress_elastic: _assembly_stress_elastic

class _yield_utilisation(_Formula, Protocol):
    """Share of yield used while tightening (plastic torsion).

    preload F_M [N], thread_torque M_G [N.m], stress_diameter d_s [m], yield_strength R_p0.2 [Pa] -> utilisation nu [1]
    """
    @overload
    def __call__(self, preload: _Number, thread_torque: _Number, stress_diameter: _Number, yield_strength: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, thread_torque: _Numbers, stress_diameter: _Numbers, yield_strength: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, thread_torque: Any, stress_diameter: Any, yield_strength: Any, **options: Any) -> Any: ...

yield_utilisation: _yield_utilisation

class _yield_utilisation_elastic(_Formula, Protocol):
    """Share of yield used while tightening (elastic torsion).

    preload F_M [N], thread_torque M_G [N.m], stress_diameter d_s [m], yield_strength R_p0.2 [Pa] -> utilisation nu [1]
    """
    @overload
    def __call__(self, preload: _Number, thread_torque: _Number, stress_diameter: _Number, yield_strength: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, thread_torque: _Numbers, stress_diameter: _Numbers, yield_strength: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, thread_torque: Any, stress_diameter: Any, yield_strength: Any, **options: Any) -> Any: ...

yield_utilisation_elastic: _yield_utilisation_elastic

class _greatest_preload(_Formula, Protocol):
    """Maximum preload under scatter.

    preload F_M [N], scatter s [1] -> preload F_Mmax [N]
    """
    @overload
    def __call__(self, preload: _Number, scatter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, scatter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, scatter: Any, **options: Any) -> Any: ...

greatest_preload: _greatest_preload

class _least_preload(_Formula, Protocol):
    """Minimum preload under scatter.

    preload F_M [N], scatter s [1] -> preload F_Mmin [N]
    """
    @overload
    def __call__(self, preload: _Number, scatter: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, scatter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, scatter: Any, **options: Any) -> Any: ...

least_preload: _least_preload

class _tightening_factor(_Formula, Protocol):
    """Tightening factor from scatter.

    scatter s [1] -> tightening_factor alpha_A [1]
    """
    @overload
    def __call__(self, scatter: _Number) -> float: ...
    @overload
    def __call__(self, scatter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, scatter: Any, **options: Any) -> Any: ...

tightening_factor: _tightening_factor

class _preload_after_relaxation(_Formula, Protocol):
    """Preload left after relaxation.

    preload F_M [N], relaxation r [1] -> preload F_V [N]
    """
    @overload
    def __call__(self, preload: _Number, relaxation: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, relaxation: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, relaxation: Any, **options: Any) -> Any: ...

preload_after_relaxation: _preload_after_relaxation

class _angle_from_preload(_Formula, Protocol):
    """Angle of turn for a preload, elastic joint.

    preload F_M [N], bolt_resilience delta_S [m/N], plate_resilience delta_P [m/N], pitch P [m] -> angle_of_turn theta [rad]
    """
    @overload
    def __call__(self, preload: _Number, bolt_resilience: _Number, plate_resilience: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, bolt_resilience: _Numbers, plate_resilience: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, bolt_resilience: Any, plate_resilience: Any, pitch: Any, **options: Any) -> Any: ...

angle_from_preload: _angle_from_preload

class _preload_from_angle(_Formula, Protocol):
    """Preload from an angle of turn, elastic joint.

    angle_of_turn theta [rad], bolt_resilience delta_S [m/N], plate_resilience delta_P [m/N], pitch P [m] -> preload F_M [N]
    """
    @overload
    def __call__(self, angle_of_turn: _Number, bolt_resilience: _Number, plate_resilience: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, angle_of_turn: _Numbers, bolt_resilience: _Numbers, plate_resilience: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, angle_of_turn: Any, bolt_resilience: Any, plate_resilience: Any, pitch: Any, **options: Any) -> Any: ...

preload_from_angle: _preload_from_angle

class _joint_rate_angle(_Formula, Protocol):
    """Angle from 10 % to 100 % of the torque.

    torque M_A [N.m], torque_lever a [m], bolt_resilience delta_S [m/N], plate_resilience delta_P [m/N], pitch P [m] -> angle_of_turn theta [rad]
    """
    @overload
    def __call__(self, torque: _Number, torque_lever: _Number, bolt_resilience: _Number, plate_resilience: _Number, pitch: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, torque_lever: _Numbers, bolt_resilience: _Numbers, plate_resilience: _Numbers, pitch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, torque_lever: Any, bolt_resilience: Any, plate_resilience: Any, pitch: Any, **options: Any) -> Any: ...

joint_rate_angle: _joint_rate_angle

class _embedding_loss(_Formula, Protocol):
    """Preload lost to embedding.

    embedding f_Z [m], bolt_resilience delta_S [m/N], plate_resilience delta_P [m/N] -> preload_loss F_Z [N]
    """
    @overload
    def __call__(self, embedding: _Number, bolt_resilience: _Number, plate_resilience: _Number) -> float: ...
    @overload
    def __call__(self, embedding: _Numbers, bolt_resilience: _Numbers, plate_resilience: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, embedding: Any, bolt_resilience: Any, plate_resilience: Any, **options: Any) -> Any: ...

embedding_loss: _embedding_loss

class _thermal_loss(_Formula, Protocol):
    """Preload lost to a change of temperature.

    grip_length l_K [m], bolt_expansion alpha_S [1/K], bolt_warming T_S [K], plate_expansion alpha_P [1/K], plate_warming T_P [K], bolt_resilience delta_S [m/N], plate_resilience delta_P [m/N] -> preload_loss F_Vth [N]
    """
    @overload
    def __call__(self, grip_length: _Number, bolt_expansion: _Number, bolt_warming: _Number, plate_expansion: _Number, plate_warming: _Number, bolt_resilience: _Number, plate_resilience: _Number) -> float: ...
    @overload
    def __call__(self, grip_length: _Numbers, bolt_expansion: _Numbers, bolt_warming: _Numbers, plate_expansion: _Numbers, plate_warming: _Numbers, bolt_resilience: _Numbers, plate_resilience: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, grip_length: Any, bolt_expansion: Any, bolt_warming: Any, plate_expansion: Any, plate_warming: Any, bolt_resilience: Any, plate_resilience: Any, **options: Any) -> Any: ...

thermal_loss: _thermal_loss

class _segment_resilience(_Formula, Protocol):
    """Stretch per force of a cylindrical piece.

    length l [m], area A [m2], elastic_modulus E [Pa] -> segment_resilience delta [m/N]
    """
    @overload
    def __call__(self, length: _Number, area: _Number, elastic_modulus: _Number) -> float: ...
    @overload
    def __call__(self, length: _Numbers, area: _Numbers, elastic_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, length: Any, area: Any, elastic_modulus: Any, **options: Any) -> Any: ...

segment_resilience: _segment_resilience

class _two_area_stiffness(_Formula, Protocol):
    """Stiffness of shank and free thread in series.

    shank_area A_d [m2], stress_area A_s [m2], shank_length l_d [m], thread_length l_t [m], elastic_modulus E [Pa] -> bolt_stiffness k_b [N/m]
    """
    @overload
    def __call__(self, shank_area: _Number, stress_area: _Number, shank_length: _Number, thread_length: _Number, elastic_modulus: _Number) -> float: ...
    @overload
    def __call__(self, shank_area: _Numbers, stress_area: _Numbers, shank_length: _Numbers, thread_length: _Numbers, elastic_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shank_area: Any, stress_area: Any, shank_length: Any, thread_length: Any, elastic_modulus: Any, **options: Any) -> Any: ...

two_area_stiffness: _two_area_stiffness

class _shank_twist(_Formula, Protocol):
    """Elastic twist of a round piece.

    thread_torque M_G [N.m], length l [m], diameter d [m], shear_modulus G [Pa] -> twist phi_t [rad]
    """
    @overload
    def __call__(self, thread_torque: _Number, length: _Number, diameter: _Number, shear_modulus: _Number) -> float: ...
    @overload
    def __call__(self, thread_torque: _Numbers, length: _Numbers, diameter: _Numbers, shear_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, thread_torque: Any, length: Any, diameter: Any, shear_modulus: Any, **options: Any) -> Any: ...

shank_twist: _shank_twist

class _cone_resilience(_Formula, Protocol):
    """Resilience of a cone of pressure.

    thickness t [m], hole_diameter d_h [m], face_diameter d_w [m], half_angle phi_D [rad], elastic_modulus E [Pa] -> plate_resilience delta_P [m/N]
    """
    @overload
    def __call__(self, thickness: _Number, hole_diameter: _Number, face_diameter: _Number, half_angle: _Number, elastic_modulus: _Number) -> float: ...
    @overload
    def __call__(self, thickness: _Numbers, hole_diameter: _Numbers, face_diameter: _Numbers, half_angle: _Numbers, elastic_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, thickness: Any, hole_diameter: Any, face_diameter: Any, half_angle: Any, elastic_modulus: Any, **options: Any) -> Any: ...

cone_resilience: _cone_resilience

class _sleeve_resilience(_Formula, Protocol):
    """Resilience of a sleeve under pressure.

    thickness t [m], hole_diameter d_h [m], plate_diameter D_A [m], elastic_modulus E [Pa] -> plate_resilience delta_P [m/N]
    """
    @overload
    def __call__(self, thickness: _Number, hole_diameter: _Number, plate_diameter: _Number, elastic_modulus: _Number) -> float: ...
    @overload
    def __call__(self, thickness: _Numbers, hole_diameter: _Numbers, plate_diameter: _Numbers, elastic_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, thickness: Any, hole_diameter: Any, plate_diameter: Any, elastic_modulus: Any, **options: Any) -> Any: ...

sleeve_resilience: _sleeve_resilience

class _frustum_stiffness(_Formula, Protocol):
    """Stiffness of a frustum of clamped material.

    thickness t [m], hole_diameter d_h [m], face_diameter d_w [m], half_angle phi_D [rad], elastic_modulus E [Pa] -> plate_stiffness k_m [N/m]
    """
    @overload
    def __call__(self, thickness: _Number, hole_diameter: _Number, face_diameter: _Number, half_angle: _Number, elastic_modulus: _Number) -> float: ...
    @overload
    def __call__(self, thickness: _Numbers, hole_diameter: _Numbers, face_diameter: _Numbers, half_angle: _Numbers, elastic_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, thickness: Any, hole_diameter: Any, face_diameter: Any, half_angle: Any, elastic_modulus: Any, **options: Any) -> Any: ...

frustum_stiffness: _frustum_stiffness

class _cone_angle_through(_Formula, Protocol):
    """Half angle of the deformation cone, bolt with nut.

    grip_length l_K [m], face_diameter d_w [m], plate_diameter D_A [m] -> half_angle phi_D [rad]
    """
    @overload
    def __call__(self, grip_length: _Number, face_diameter: _Number, plate_diameter: _Number) -> float: ...
    @overload
    def __call__(self, grip_length: _Numbers, face_diameter: _Numbers, plate_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, grip_length: Any, face_diameter: Any, plate_diameter: Any, **options: Any) -> Any: ...

cone_angle_through: _cone_angle_through

class _cone_angle_tapped(_Formula, Protocol):
    """Half angle of the deformation cone, tapped hole.

    grip_length l_K [m], face_diameter d_w [m], plate_diameter D_A [m] -> half_angle phi_D [rad]
    """
    @overload
    def __call__(self, grip_length: _Number, face_diameter: _Number, plate_diameter: _Number) -> float: ...
    @overload
    def __call__(self, grip_length: _Numbers, face_diameter: _Numbers, plate_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, grip_length: Any, face_diameter: Any, plate_diameter: Any, **options: Any) -> Any: ...

cone_angle_tapped: _cone_angle_tapped

class _exponential_stiffness(_Formula, Protocol):
    """Stiffness of clamped parts by the exponential fit.

    diameter d [m], grip_length l_K [m], elastic_modulus E [Pa], fit_factor A_f [1], fit_exponent B_f [1] -> plate_stiffness k_m [N/m]
    """
    @overload
    def __call__(self, diameter: _Number, grip_length: _Number, elastic_modulus: _Number, fit_factor: _Number, fit_exponent: _Number) -> float: ...
    @overload
    def __call__(self, diameter: _Numbers, grip_length: _Numbers, elastic_modulus: _Numbers, fit_factor: _Numbers, fit_exponent: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, diameter: Any, grip_length: Any, elastic_modulus: Any, fit_factor: Any, fit_exponent: Any, **options: Any) -> Any: ...

exponential_stiffness: _exponential_stiffness

class _layer_stiffness(_Formula, Protocol):
    """Stiffness of layers in series.

    first_layer k_1 [N/m], second_layer k_2 [N/m], third_layer k_3 [N/m], fourth_layer k_4 [N/m] -> plate_stiffness k_m [N/m]
    """
    @overload
    def __call__(self, first_layer: _Number, second_layer: _Number, third_layer: _Number, fourth_layer: _Number) -> float: ...
    @overload
    def __call__(self, first_layer: _Numbers, second_layer: _Numbers, third_layer: _Numbers, fourth_layer: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, first_layer: Any, second_layer: Any, third_layer: Any, fourth_layer: Any, **options: Any) -> Any: ...

layer_stiffness: _layer_stiffness

class _joint_constant(_Formula, Protocol):
    """Share of the working load that reaches the bolt.

    bolt_stiffness k_b [N/m], plate_stiffness k_m [N/m] -> joint_constant C [1]
    """
    @overload
    def __call__(self, bolt_stiffness: _Number, plate_stiffness: _Number) -> float: ...
    @overload
    def __call__(self, bolt_stiffness: _Numbers, plate_stiffness: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, bolt_stiffness: Any, plate_stiffness: Any, **options: Any) -> Any: ...

joint_constant: _joint_constant

class _load_factor(_Formula, Protocol):
    """Share of the working load that reaches the bolt, by load introduction.

    load_introduction n [1], bolt_resilience delta_S [m/N], plate_resilience delta_P [m/N] -> joint_constant Phi_n [1]
    """
    @overload
    def __call__(self, load_introduction: _Number, bolt_resilience: _Number, plate_resilience: _Number) -> float: ...
    @overload
    def __call__(self, load_introduction: _Numbers, bolt_resilience: _Numbers, plate_resilience: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, load_introduction: Any, bolt_resilience: Any, plate_resilience: Any, **options: Any) -> Any: ...

load_factor: _load_factor

class _service_bolt_load(_Formula, Protocol):
    """Load on the bolt under a working load.

    preload F_M [N], joint_constant C [1], working_load F_A [N] -> bolt_load F_S [N]
    """
    @overload
    def __call__(self, preload: _Number, joint_constant: _Number, working_load: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, joint_constant: _Numbers, working_load: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, joint_constant: Any, working_load: Any, **options: Any) -> Any: ...

service_bolt_load: _service_bolt_load

class _service_clamp_load(_Formula, Protocol):
    """Clamp load that remains under a working load.

    preload F_M [N], joint_constant C [1], working_load F_A [N] -> clamp_load F_K [N]
    """
    @overload
    def __call__(self, preload: _Number, joint_constant: _Number, working_load: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, joint_constant: _Numbers, working_load: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, joint_constant: Any, working_load: Any, **options: Any) -> Any: ...

service_clamp_load: _service_clamp_load

class _separation_load(_Formula, Protocol):
    """Working load that opens the joint.

    preload F_M [N], joint_constant C [1] -> working_load F_A [N]
    """
    @overload
    def __call__(self, preload: _Number, joint_constant: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, joint_constant: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, joint_constant: Any, **options: Any) -> Any: ...

separation_load: _separation_load

class _service_stress(_Formula, Protocol):
    """Stress in the thread under a working load.

    preload F_M [N], joint_constant C [1], working_load F_A [N], stress_area A_s [m2] -> stress sigma_b [Pa]
    """
    @overload
    def __call__(self, preload: _Number, joint_constant: _Number, working_load: _Number, stress_area: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, joint_constant: _Numbers, working_load: _Numbers, stress_area: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, joint_constant: Any, working_load: Any, stress_area: Any, **options: Any) -> Any: ...

service_stress: _service_stress

class _yield_factor(_Formula, Protocol):
    """Proof load over the load on the bolt.

    proof_stress S_p [Pa], stress_area A_s [m2], joint_constant C [1], working_load F_A [N], preload F_M [N] -> yield_factor n_p [1]
    """
    @overload
    def __call__(self, proof_stress: _Number, stress_area: _Number, joint_constant: _Number, working_load: _Number, preload: _Number) -> float: ...
    @overload
    def __call__(self, proof_stress: _Numbers, stress_area: _Numbers, joint_constant: _Numbers, working_load: _Numbers, preload: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, proof_stress: Any, stress_area: Any, joint_constant: Any, working_load: Any, preload: Any, **options: Any) -> Any: ...

yield_factor: _yield_factor

class _overload_factor(_Formula, Protocol):
    """Growth of the working load up to the proof load.

    proof_stress S_p [Pa], stress_area A_s [m2], joint_constant C [1], working_load F_A [N], preload F_M [N] -> overload_factor n_L [1]
    """
    @overload
    def __call__(self, proof_stress: _Number, stress_area: _Number, joint_constant: _Number, working_load: _Number, preload: _Number) -> float: ...
    @overload
    def __call__(self, proof_stress: _Numbers, stress_area: _Numbers, joint_constant: _Numbers, working_load: _Numbers, preload: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, proof_stress: Any, stress_area: Any, joint_constant: Any, working_load: Any, preload: Any, **options: Any) -> Any: ...

overload_factor: _overload_factor

class _separation_factor(_Formula, Protocol):
    """Separation load over the working load.

    preload F_M [N], joint_constant C [1], working_load F_A [N] -> separation_factor n_0 [1]
    """
    @overload
    def __call__(self, preload: _Number, joint_constant: _Number, working_load: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, joint_constant: _Numbers, working_load: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, joint_constant: Any, working_load: Any, **options: Any) -> Any: ...

separation_factor: _separation_factor

class _circle_from_chord(_Formula, Protocol):
    """Bolt circle from one measured chord.

    chord c [m], spaces k [1], bolt_count n_b [1] -> circle_diameter D_c [m]
    """
    @overload
    def __call__(self, chord: _Number, spaces: _Number, bolt_count: _Number) -> float: ...
    @overload
    def __call__(self, chord: _Numbers, spaces: _Numbers, bolt_count: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, chord: Any, spaces: Any, bolt_count: Any, **options: Any) -> Any: ...

circle_from_chord: _circle_from_chord

class _passes_for_evenness(_Formula, Protocol):
    """Passes at full torque that leave a ring of bolts even.

    neighbour_loss c_n [1], shortfall e_F [1] -> passes k [1]
    """
    @overload
    def __call__(self, neighbour_loss: _Number, shortfall: _Number) -> float: ...
    @overload
    def __call__(self, neighbour_loss: _Numbers, shortfall: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, neighbour_loss: Any, shortfall: Any, **options: Any) -> Any: ...

passes_for_evenness: _passes_for_evenness

class _group_bolt_load(_Formula, Protocol):
    """Load of one bolt of a group along one direction.

    working_load F_A [N], bolt_count n_b [1], moment M [N.m], moment_arm c [m], square_sum J [m2] -> bolt_load F_i [N]
    """
    @overload
    def __call__(self, working_load: _Number, bolt_count: _Number, moment: _Number, moment_arm: _Number, square_sum: _Number) -> float: ...
    @overload
    def __call__(self, working_load: _Numbers, bolt_count: _Numbers, moment: _Numbers, moment_arm: _Numbers, square_sum: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, working_load: Any, bolt_count: Any, moment: Any, moment_arm: Any, square_sum: Any, **options: Any) -> Any: ...

group_bolt_load: _group_bolt_load

class _resultant_force(_Formula, Protocol):
    """Resultant of two forces at right angles.

    force_x F_x [N], force_y F_y [N] -> shear V [N]
    """
    @overload
    def __call__(self, force_x: _Number, force_y: _Number) -> float: ...
    @overload
    def __call__(self, force_x: _Numbers, force_y: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, force_x: Any, force_y: Any, **options: Any) -> Any: ...

resultant_force: _resultant_force

class _principal_tension(_Formula, Protocol):
    """Tension equivalent to tension and shear together.

    tension T [N], shear V [N] -> tension T_e [N]
    """
    @overload
    def __call__(self, tension: _Number, shear: _Number) -> float: ...
    @overload
    def __call__(self, tension: _Numbers, shear: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, tension: Any, shear: Any, **options: Any) -> Any: ...

principal_tension: _principal_tension

class _plate_plastic_moment(_Formula, Protocol):
    """Plastic moment of a strip of plate.

    length l [m], thickness t [m], stress S [Pa] -> plastic_moment M_pl [N.m]
    """
    @overload
    def __call__(self, length: _Number, thickness: _Number, stress: _Number) -> float: ...
    @overload
    def __call__(self, length: _Numbers, thickness: _Numbers, stress: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, length: Any, thickness: Any, stress: Any, **options: Any) -> Any: ...

plate_plastic_moment: _plate_plastic_moment

class _no_prying_thickness(_Formula, Protocol):
    """Thickness of plate from which its edge does not press.

    load F [N], bolt_lever b_1 [m], length l [m], stress S [Pa] -> no_prying_thickness t_c [m]
    """
    @overload
    def __call__(self, load: _Number, bolt_lever: _Number, length: _Number, stress: _Number) -> float: ...
    @overload
    def __call__(self, load: _Numbers, bolt_lever: _Numbers, length: _Numbers, stress: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, load: Any, bolt_lever: Any, length: Any, stress: Any, **options: Any) -> Any: ...

no_prying_thickness: _no_prying_thickness

class _prying_bending_share(_Formula, Protocol):
    """Moment of a prying plate at the bolts over that at the web.

    no_prying_thickness t_c [m], thickness t [m], net_share delta [1], lever_ratio rho [1] -> bending_share alpha [1]
    """
    @overload
    def __call__(self, no_prying_thickness: _Number, thickness: _Number, net_share: _Number, lever_ratio: _Number) -> float: ...
    @overload
    def __call__(self, no_prying_thickness: _Numbers, thickness: _Numbers, net_share: _Numbers, lever_ratio: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, no_prying_thickness: Any, thickness: Any, net_share: Any, lever_ratio: Any, **options: Any) -> Any: ...

prying_bending_share: _prying_bending_share

class _prying_strength_share(_Formula, Protocol):
    """Share of the strength of a bolt that prying leaves.

    no_prying_thickness t_c [m], thickness t [m], net_share delta [1], bending_share alpha [1] -> strength_share Q [1]
    """
    @overload
    def __call__(self, no_prying_thickness: _Number, thickness: _Number, net_share: _Number, bending_share: _Number) -> float: ...
    @overload
    def __call__(self, no_prying_thickness: _Numbers, thickness: _Numbers, net_share: _Numbers, bending_share: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, no_prying_thickness: Any, thickness: Any, net_share: Any, bending_share: Any, **options: Any) -> Any: ...

prying_strength_share: _prying_strength_share

class _edge_force(_Formula, Protocol):
    """Force with which the edge of a prying plate presses.

    load F [N], bolt_lever b_1 [m], plastic_moment M_pl [N.m], edge_lever a_1 [m] -> edge_force q [N]
    """
    @overload
    def __call__(self, load: _Number, bolt_lever: _Number, plastic_moment: _Number, edge_lever: _Number) -> float: ...
    @overload
    def __call__(self, load: _Numbers, bolt_lever: _Numbers, plastic_moment: _Numbers, edge_lever: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, load: Any, bolt_lever: Any, plastic_moment: Any, edge_lever: Any, **options: Any) -> Any: ...

edge_force: _edge_force

class _tee_flange_strength(_Formula, Protocol):
    """Resistance of a T-stub whose flange yields, mode 1.

    plastic_moment M_pl [N.m], web_distance m [m], edge_distance n [m], washer_share e_w [m] -> load F_1 [N]
    """
    @overload
    def __call__(self, plastic_moment: _Number, web_distance: _Number, edge_distance: _Number, washer_share: _Number) -> float: ...
    @overload
    def __call__(self, plastic_moment: _Numbers, web_distance: _Numbers, edge_distance: _Numbers, washer_share: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, plastic_moment: Any, web_distance: Any, edge_distance: Any, washer_share: Any, **options: Any) -> Any: ...

tee_flange_strength: _tee_flange_strength

class _tee_combined_strength(_Formula, Protocol):
    """Resistance of a T-stub whose flange and bolts yield, mode 2.

    plastic_moment M_pl [N.m], web_distance m [m], edge_distance n [m], load F [N] -> load F_2 [N]
    """
    @overload
    def __call__(self, plastic_moment: _Number, web_distance: _Number, edge_distance: _Number, load: _Number) -> float: ...
    @overload
    def __call__(self, plastic_moment: _Numbers, web_distance: _Numbers, edge_distance: _Numbers, load: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, plastic_moment: Any, web_distance: Any, edge_distance: Any, load: Any, **options: Any) -> Any: ...

tee_combined_strength: _tee_combined_strength

class _wrench_setting(_Formula, Protocol):
    """Setting of a torque wrench with an offset extension.

    torque M_A [N.m], wrench_length L [m], extension_length E [m], extension_angle alpha [rad] -> setting M_S [N.m]
    """
    @overload
    def __call__(self, torque: _Number, wrench_length: _Number, extension_length: _Number, extension_angle: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, wrench_length: Any, extension_length: Any, extension_angle: Any, **options: Any) -> Any: ...

wrench_setting: _wrench_setting

class _torque_at_fastener(_Formula, Protocol):
    """Torque at the fastener from a wrench setting with an offset extension.

    setting M_S [N.m], wrench_length L [m], extension_length E [m], extension_angle alpha [rad] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, setting: _Number, wrench_length: _Number, extension_length: _Number, extension_angle: _Number) -> float: ...
    @overload
    def __call__(self, setting: _Numbers, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, setting: Any, wrench_length: Any, extension_length: Any, extension_angle: Any, **options: Any) -> Any: ...

torque_at_fastener: _torque_at_fastener

class _torque_with_support_hand(_Formula, Protocol):
    """Torque at the fastener when a second hand steadies the wrench head.

    setting M_S [N.m], wrench_length L [m], extension_length E [m], extension_angle alpha [rad], support_share q [1] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, setting: _Number, wrench_length: _Number, extension_length: _Number, extension_angle: _Number, support_share: _Number) -> float: ...
    @overload
    def __call__(self, setting: _Numbers, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, support_share: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, setting: Any, wrench_length: Any, extension_length: Any, extension_angle: Any, support_share: Any, **options: Any) -> Any: ...

torque_with_support_hand: _torque_with_support_hand

class _setting_with_support_hand(_Formula, Protocol):
    """Setting of a torque wrench when a second hand steadies its head.

    torque M_A [N.m], wrench_length L [m], extension_length E [m], extension_angle alpha [rad], support_share q [1] -> setting M_S [N.m]
    """
    @overload
    def __call__(self, torque: _Number, wrench_length: _Number, extension_length: _Number, extension_angle: _Number, support_share: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, support_share: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, wrench_length: Any, extension_length: Any, extension_angle: Any, support_share: Any, **options: Any) -> Any: ...

setting_with_support_hand: _setting_with_support_hand

class _hand_shift_error(_Formula, Protocol):
    """Relative change of the torque when the hand moves along the handle.

    wrench_length L [m], extension_length E [m], extension_angle alpha [rad], hand_shift dL [m] -> relative_error e [1]
    """
    @overload
    def __call__(self, wrench_length: _Number, extension_length: _Number, extension_angle: _Number, hand_shift: _Number) -> float: ...
    @overload
    def __call__(self, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, hand_shift: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, wrench_length: Any, extension_length: Any, extension_angle: Any, hand_shift: Any, **options: Any) -> Any: ...

hand_shift_error: _hand_shift_error

class _extension_angle_error(_Formula, Protocol):
    """Relative change of the torque when the extension stands at another angle.

    wrench_length L [m], extension_length E [m], extension_angle alpha [rad], angle_shift delta_a [rad] -> relative_error e [1]
    """
    @overload
    def __call__(self, wrench_length: _Number, extension_length: _Number, extension_angle: _Number, angle_shift: _Number) -> float: ...
    @overload
    def __call__(self, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, angle_shift: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, wrench_length: Any, extension_length: Any, extension_angle: Any, angle_shift: Any, **options: Any) -> Any: ...

extension_angle_error: _extension_angle_error

class _pull_angle_error(_Formula, Protocol):
    """Relative change of the torque when the pull is not square to the handle.

    wrench_length L [m], extension_length E [m], extension_angle alpha [rad], pull_angle delta [rad] -> relative_error e [1]
    """
    @overload
    def __call__(self, wrench_length: _Number, extension_length: _Number, extension_angle: _Number, pull_angle: _Number) -> float: ...
    @overload
    def __call__(self, wrench_length: _Numbers, extension_length: _Numbers, extension_angle: _Numbers, pull_angle: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, wrench_length: Any, extension_length: Any, extension_angle: Any, pull_angle: Any, **options: Any) -> Any: ...

pull_angle_error: _pull_angle_error

class _square_bar_stiffness(_Formula, Protocol):
    """Torque per radian of twist of a square bar.

    length l [m], side a [m], shear_modulus G [Pa] -> torsional_stiffness c_T [N.m]
    """
    @overload
    def __call__(self, length: _Number, side: _Number, shear_modulus: _Number) -> float: ...
    @overload
    def __call__(self, length: _Numbers, side: _Numbers, shear_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, length: Any, side: Any, shear_modulus: Any, **options: Any) -> Any: ...

square_bar_stiffness: _square_bar_stiffness

class _round_bar_stiffness(_Formula, Protocol):
    """Torque per radian of twist of a round bar.

    length l [m], diameter d [m], shear_modulus G [Pa] -> torsional_stiffness c_T [N.m]
    """
    @overload
    def __call__(self, length: _Number, diameter: _Number, shear_modulus: _Number) -> float: ...
    @overload
    def __call__(self, length: _Numbers, diameter: _Numbers, shear_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, length: Any, diameter: Any, shear_modulus: Any, **options: Any) -> Any: ...

round_bar_stiffness: _round_bar_stiffness

class _hexagon_bar_stiffness(_Formula, Protocol):
    """Torque per radian of twist of a hexagonal shank.

    length l [m], width_across_flats s [m], shear_modulus G [Pa] -> torsional_stiffness c_T [N.m]
    """
    @overload
    def __call__(self, length: _Number, width_across_flats: _Number, shear_modulus: _Number) -> float: ...
    @overload
    def __call__(self, length: _Numbers, width_across_flats: _Numbers, shear_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, length: Any, width_across_flats: Any, shear_modulus: Any, **options: Any) -> Any: ...

hexagon_bar_stiffness: _hexagon_bar_stiffness

class _bar_twist(_Formula, Protocol):
    """Twist of a square bar.

    torque M_A [N.m], length l [m], side a [m], shear_modulus G [Pa] -> twist theta_T [rad]
    """
    @overload
    def __call__(self, torque: _Number, length: _Number, side: _Number, shear_modulus: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, length: _Numbers, side: _Numbers, shear_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, length: Any, side: Any, shear_modulus: Any, **options: Any) -> Any: ...

bar_twist: _bar_twist

class _round_bar_twist(_Formula, Protocol):
    """Twist of a round bar.

    torque M_A [N.m], length l [m], diameter d [m], shear_modulus G [Pa] -> twist theta_T [rad]
    """
    @overload
    def __call__(self, torque: _Number, length: _Number, diameter: _Number, shear_modulus: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, length: _Numbers, diameter: _Numbers, shear_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, length: Any, diameter: Any, shear_modulus: Any, **options: Any) -> Any: ...

round_bar_twist: _round_bar_twist

class _series_stiffness(_Formula, Protocol):
    """Torsional stiffness of two bars in series.

    first_stiffness c_1 [N.m], second_stiffness c_2 [N.m] -> torsional_stiffness c_T [N.m]
    """
    @overload
    def __call__(self, first_stiffness: _Number, second_stiffness: _Number) -> float: ...
    @overload
    def __call__(self, first_stiffness: _Numbers, second_stiffness: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, first_stiffness: Any, second_stiffness: Any, **options: Any) -> Any: ...

series_stiffness: _series_stiffness

class _fastener_angle(_Formula, Protocol):
    """Angle at the fastener from the angle read at the handle.

    handle_angle theta_h [rad], snug_torque M_0 [N.m], torque M_A [N.m], torsional_stiffness c_T [N.m] -> angle_of_turn theta [rad]
    """
    @overload
    def __call__(self, handle_angle: _Number, snug_torque: _Number, torque: _Number, torsional_stiffness: _Number) -> float: ...
    @overload
    def __call__(self, handle_angle: _Numbers, snug_torque: _Numbers, torque: _Numbers, torsional_stiffness: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, handle_angle: Any, snug_torque: Any, torque: Any, torsional_stiffness: Any, **options: Any) -> Any: ...

fastener_angle: _fastener_angle

class _handle_angle(_Formula, Protocol):
    """Angle to read at the handle for an angle at the fastener.

    angle_of_turn theta [rad], snug_torque M_0 [N.m], torque M_A [N.m], torsional_stiffness c_T [N.m] -> handle_angle theta_h [rad]
    """
    @overload
    def __call__(self, angle_of_turn: _Number, snug_torque: _Number, torque: _Number, torsional_stiffness: _Number) -> float: ...
    @overload
    def __call__(self, angle_of_turn: _Numbers, snug_torque: _Numbers, torque: _Numbers, torsional_stiffness: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, angle_of_turn: Any, snug_torque: Any, torque: Any, torsional_stiffness: Any, **options: Any) -> Any: ...

handle_angle: _handle_angle

class _twist_energy(_Formula, Protocol):
    """Energy stored in a twisted bar.

    torque M_A [N.m], torsional_stiffness c_T [N.m] -> energy U [J]
    """
    @overload
    def __call__(self, torque: _Number, torsional_stiffness: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, torsional_stiffness: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, torsional_stiffness: Any, **options: Any) -> Any: ...

twist_energy: _twist_energy

class _blow_torque(_Formula, Protocol):
    """Peak torque of a blow on an elastic drive line.

    energy U [J], torsional_stiffness c_T [N.m] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, energy: _Number, torsional_stiffness: _Number) -> float: ...
    @overload
    def __call__(self, energy: _Numbers, torsional_stiffness: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, energy: Any, torsional_stiffness: Any, **options: Any) -> Any: ...

blow_torque: _blow_torque

class _universal_joint_ratio(_Formula, Protocol):
    """Speed ratio of a universal joint over the turn.

    bend_angle beta [rad], rotation theta [rad] -> speed_ratio i_u [1]
    """
    @overload
    def __call__(self, bend_angle: _Number, rotation: _Number) -> float: ...
    @overload
    def __call__(self, bend_angle: _Numbers, rotation: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, bend_angle: Any, rotation: Any, **options: Any) -> Any: ...

universal_joint_ratio: _universal_joint_ratio

class _universal_joint_least_ratio(_Formula, Protocol):
    """Minimum ratio of a universal joint over the turn.

    bend_angle beta [rad] -> speed_ratio i_u [1]
    """
    @overload
    def __call__(self, bend_angle: _Number) -> float: ...
    @overload
    def __call__(self, bend_angle: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, bend_angle: Any, **options: Any) -> Any: ...

universal_joint_least_ratio: _universal_joint_least_ratio

class _universal_joint_greatest_ratio(_Formula, Protocol):
    """Maximum ratio of a universal joint over the turn.

    bend_angle beta [rad] -> speed_ratio i_u [1]
    """
    @overload
    def __call__(self, bend_angle: _Number) -> float: ...
    @overload
    def __call__(self, bend_angle: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, bend_angle: Any, **options: Any) -> Any: ...

universal_joint_greatest_ratio: _universal_joint_greatest_ratio

class _universal_joint_bend(_Formula, Protocol):
    """Bend of a universal joint that keeps to a given variation.

    variation v [1] -> bend_angle beta [rad]
    """
    @overload
    def __call__(self, variation: _Number) -> float: ...
    @overload
    def __call__(self, variation: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, variation: Any, **options: Any) -> Any: ...

universal_joint_bend: _universal_joint_bend

class _multiplier_output(_Formula, Protocol):
    """Output torque of a torque multiplier.

    torque M_A [N.m], gear_ratio i [1], efficiency eta [1] -> output_torque M_2 [N.m]
    """
    @overload
    def __call__(self, torque: _Number, gear_ratio: _Number, efficiency: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, gear_ratio: _Numbers, efficiency: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, gear_ratio: Any, efficiency: Any, **options: Any) -> Any: ...

multiplier_output: _multiplier_output

class _multiplier_input(_Formula, Protocol):
    """Input torque of a torque multiplier for an output torque.

    output_torque M_2 [N.m], gear_ratio i [1], efficiency eta [1] -> torque M_A [N.m]
    """
    @overload
    def __call__(self, output_torque: _Number, gear_ratio: _Number, efficiency: _Number) -> float: ...
    @overload
    def __call__(self, output_torque: _Numbers, gear_ratio: _Numbers, efficiency: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, output_torque: Any, gear_ratio: Any, efficiency: Any, **options: Any) -> Any: ...

multiplier_input: _multiplier_input

class _multiplier_reaction(_Formula, Protocol):
    """Torque at the reaction arm of a torque multiplier.

    torque M_A [N.m], output_torque M_2 [N.m] -> reaction_torque M_R [N.m]
    """
    @overload
    def __call__(self, torque: _Number, output_torque: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, output_torque: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, output_torque: Any, **options: Any) -> Any: ...

multiplier_reaction: _multiplier_reaction

class _reaction_force(_Formula, Protocol):
    """Force where a reaction arm rests.

    reaction_torque M_R [N.m], arm_length l_R [m] -> reaction_force F_R [N]
    """
    @overload
    def __call__(self, reaction_torque: _Number, arm_length: _Number) -> float: ...
    @overload
    def __call__(self, reaction_torque: _Numbers, arm_length: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, reaction_torque: Any, arm_length: Any, **options: Any) -> Any: ...

reaction_force: _reaction_force

class _counter_hold_torque(_Formula, Protocol):
    """Torque that holds the other side of the joint.

    torque M_A [N.m], bearing_torque M_K [N.m] -> hold_torque M_H [N.m]
    """
    @overload
    def __call__(self, torque: _Number, bearing_torque: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, bearing_torque: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, bearing_torque: Any, **options: Any) -> Any: ...

counter_hold_torque: _counter_hold_torque

class _square_yield_torque(_Formula, Protocol):
    """Torque at first yield of a square bar.

    shear_strength tau_u [Pa], side a [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, side: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, side: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, side: Any, **options: Any) -> Any: ...

square_yield_torque: _square_yield_torque

class _square_plastic_torque(_Formula, Protocol):
    """Torque of the fully plastic square bar.

    shear_strength tau_u [Pa], side a [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, side: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, side: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, side: Any, **options: Any) -> Any: ...

square_plastic_torque: _square_plastic_torque

class _hexagon_plastic_torque(_Formula, Protocol):
    """Torque of the fully plastic hexagonal key.

    shear_strength tau_u [Pa], width_across_flats s [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, width_across_flats: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, width_across_flats: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, width_across_flats: Any, **options: Any) -> Any: ...

hexagon_plastic_torque: _hexagon_plastic_torque

class _hexalobular_plastic_torque(_Formula, Protocol):
    """Torque of the fully plastic six-lobed bit (estimate).

    shear_strength tau_u [Pa], outer_diameter d_a [m], inner_diameter d_i [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, outer_diameter: _Number, inner_diameter: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, outer_diameter: _Numbers, inner_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, outer_diameter: Any, inner_diameter: Any, **options: Any) -> Any: ...

hexalobular_plastic_torque: _hexalobular_plastic_torque

class _ring_test_torque(_Formula, Protocol):
    """Test torque of ring wrenches and sockets.

    width_across_flats s [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, width_across_flats: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, **options: Any) -> Any: ...

ring_test_torque: _ring_test_torque

class _open_end_test_torque(_Formula, Protocol):
    """Test torque of open-ended wrenches.

    width_across_flats s [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, width_across_flats: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, **options: Any) -> Any: ...

open_end_test_torque: _open_end_test_torque

class _hexagon_key_test_torque(_Formula, Protocol):
    """Test torque of a hexagon key.

    test_stress k [Pa], width_across_flats s [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, test_stress: _Number, width_across_flats: _Number) -> float: ...
    @overload
    def __call__(self, test_stress: _Numbers, width_across_flats: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, test_stress: Any, width_across_flats: Any, **options: Any) -> Any: ...

hexagon_key_test_torque: _hexagon_key_test_torque

class _hexagon_key_strength(_Formula, Protocol):
    """Torsional strength of a hexagon key (estimate).

    breaking_stress k_B [Pa], width_across_flats s [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, breaking_stress: _Number, width_across_flats: _Number) -> float: ...
    @overload
    def __call__(self, breaking_stress: _Numbers, width_across_flats: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, breaking_stress: Any, width_across_flats: Any, **options: Any) -> Any: ...

hexagon_key_strength: _hexagon_key_strength

class _breakaway_torque(_Formula, Protocol):
    """Torque that starts a joint which has stood (estimate: real ones spread by a factor of two).

    preload F_M [N], pitch P [m], pitch_diameter d_2 [m], thread_friction mu_G [1], bearing_friction mu_K [1], bearing_diameter D_Km [m], thread_growth f_t [1], bearing_growth f_b [1], bond_torque T_bond [N.m], rust_torque T_press [N.m], prevailing_torque M_P [N.m] -> breakaway_torque T_off [N.m]
    """
    @overload
    def __call__(self, preload: _Number, pitch: _Number, pitch_diameter: _Number, thread_friction: _Number, bearing_friction: _Number, bearing_diameter: _Number, thread_growth: _Number, bearing_growth: _Number, bond_torque: _Number, rust_torque: _Number, prevailing_torque: _Number) -> float: ...
    @overload
    def __call__(self, preload: _Numbers, pitch: _Numbers, pitch_diameter: _Numbers, thread_friction: _Numbers, bearing_friction: _Numbers, bearing_diameter: _Numbers, thread_growth: _Numbers, bearing_growth: _Numbers, bond_torque: _Numbers, rust_torque: _Numbers, prevailing_torque: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, preload: Any, pitch: Any, pitch_diameter: Any, thread_friction: Any, bearing_friction: Any, bearing_diameter: Any, thread_growth: Any, bearing_growth: Any, bond_torque: Any, rust_torque: Any, prevailing_torque: Any, **options: Any) -> Any: ...

breakaway_torque: _breakaway_torque

class _restart_torque(_Formula, Protocol):
    """Torque to tighten further after stretch was lost.

    torque M_A [N.m], stretch f [m], remaining_stretch f_r [m] -> torque M_r [N.m]
    """
    @overload
    def __call__(self, torque: _Number, stretch: _Number, remaining_stretch: _Number) -> float: ...
    @overload
    def __call__(self, torque: _Numbers, stretch: _Numbers, remaining_stretch: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torque: Any, stretch: Any, remaining_stretch: Any, **options: Any) -> Any: ...

restart_torque: _restart_torque

class _bond_torque(_Formula, Protocol):
    """Torque to shear a bond on the thread flanks.

    bond_strength tau_B [Pa], flank_factor k_A [1], pitch_diameter d_2 [m], engaged_length L_e [m] -> bond_torque T_bond [N.m]
    """
    @overload
    def __call__(self, bond_strength: _Number, flank_factor: _Number, pitch_diameter: _Number, engaged_length: _Number) -> float: ...
    @overload
    def __call__(self, bond_strength: _Numbers, flank_factor: _Numbers, pitch_diameter: _Numbers, engaged_length: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, bond_strength: Any, flank_factor: Any, pitch_diameter: Any, engaged_length: Any, **options: Any) -> Any: ...

bond_torque: _bond_torque

class _rust_torque(_Formula, Protocol):
    """Friction torque from the pressure of rust in the thread.

    rust_pressure p_R [Pa], thread_friction mu_G [1], flank_factor k_A [1], pitch_diameter d_2 [m], engaged_length L_e [m] -> rust_torque T_press [N.m]
    """
    @overload
    def __call__(self, rust_pressure: _Number, thread_friction: _Number, flank_factor: _Number, pitch_diameter: _Number, engaged_length: _Number) -> float: ...
    @overload
    def __call__(self, rust_pressure: _Numbers, thread_friction: _Numbers, flank_factor: _Numbers, pitch_diameter: _Numbers, engaged_length: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, rust_pressure: Any, thread_friction: Any, flank_factor: Any, pitch_diameter: Any, engaged_length: Any, **options: Any) -> Any: ...

rust_torque: _rust_torque

class _rust_volume_ratio(_Formula, Protocol):
    """Volume of rust over the volume of its iron.

    oxide_volume V_ox [1], iron_atoms z [1], iron_volume V_Fe [1] -> volume_ratio n [1]
    """
    @overload
    def __call__(self, oxide_volume: _Number, iron_atoms: _Number, iron_volume: _Number) -> float: ...
    @overload
    def __call__(self, oxide_volume: _Numbers, iron_atoms: _Numbers, iron_volume: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, oxide_volume: Any, iron_atoms: Any, iron_volume: Any, **options: Any) -> Any: ...

rust_volume_ratio: _rust_volume_ratio

class _metal_loss(_Formula, Protocol):
    """Depth of steel lost to corrosion after some years.

    first_year_loss r_corr [m], years t [1] -> metal_loss x [m]
    """
    @overload
    def __call__(self, first_year_loss: _Number, years: _Number) -> float: ...
    @overload
    def __call__(self, first_year_loss: _Numbers, years: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, first_year_loss: Any, years: Any, **options: Any) -> Any: ...

metal_loss: _metal_loss

class _rust_growth(_Formula, Protocol):
    """Thickness gained where steel turns to rust.

    metal_loss x [m], volume_ratio n [1] -> rust_growth s_R [m]
    """
    @overload
    def __call__(self, metal_loss: _Number, volume_ratio: _Number) -> float: ...
    @overload
    def __call__(self, metal_loss: _Numbers, volume_ratio: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, metal_loss: Any, volume_ratio: Any, **options: Any) -> Any: ...

rust_growth: _rust_growth

class _rust_interference(_Formula, Protocol):
    """Radial interference from rust on the flanks of a thread.

    rust_growth s_R [m], flank_play j_F [m] -> interference u [m]
    """
    @overload
    def __call__(self, rust_growth: _Number, flank_play: _Number) -> float: ...
    @overload
    def __call__(self, rust_growth: _Numbers, flank_play: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, rust_growth: Any, flank_play: Any, **options: Any) -> Any: ...

rust_interference: _rust_interference

class _rust_pressure(_Formula, Protocol):
    """Pressure of rust that has filled the play (upper bound).

    interference u [m], elastic_modulus E [Pa], diameter d [m], outer_diameter d_a [m] -> radial_pressure p_r [Pa]
    """
    @overload
    def __call__(self, interference: _Number, elastic_modulus: _Number, diameter: _Number, outer_diameter: _Number) -> float: ...
    @overload
    def __call__(self, interference: _Numbers, elastic_modulus: _Numbers, diameter: _Numbers, outer_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, interference: Any, elastic_modulus: Any, diameter: Any, outer_diameter: Any, **options: Any) -> Any: ...

rust_pressure: _rust_pressure

class _flank_pressure(_Formula, Protocol):
    """Pressure on the flanks that goes with a radial pressure.

    radial_pressure p_r [Pa], flank_factor k_A [1] -> rust_pressure p_R [Pa]
    """
    @overload
    def __call__(self, radial_pressure: _Number, flank_factor: _Number) -> float: ...
    @overload
    def __call__(self, radial_pressure: _Numbers, flank_factor: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, radial_pressure: Any, flank_factor: Any, **options: Any) -> Any: ...

flank_pressure: _flank_pressure

class _corroded_breaking_torque(_Formula, Protocol):
    """Minimum breaking torque of a corroded bolt.

    torsion_ratio X [1], tensile_strength R_m [Pa], root_diameter d_3 [m], metal_loss x [m] -> torque M_B [N.m]
    """
    @overload
    def __call__(self, torsion_ratio: _Number, tensile_strength: _Number, root_diameter: _Number, metal_loss: _Number) -> float: ...
    @overload
    def __call__(self, torsion_ratio: _Numbers, tensile_strength: _Numbers, root_diameter: _Numbers, metal_loss: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, torsion_ratio: Any, tensile_strength: Any, root_diameter: Any, metal_loss: Any, **options: Any) -> Any: ...

corroded_breaking_torque: _corroded_breaking_torque

class _partly_plastic_torque(_Formula, Protocol):
    """Torque of a round section with an elastic core.

    shear_strength tau_u [Pa], diameter d [m], core_diameter d_c [m] -> torque T [N.m]
    """
    @overload
    def __call__(self, shear_strength: _Number, diameter: _Number, core_diameter: _Number) -> float: ...
    @overload
    def __call__(self, shear_strength: _Numbers, diameter: _Numbers, core_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, shear_strength: Any, diameter: Any, core_diameter: Any, **options: Any) -> Any: ...

partly_plastic_torque: _partly_plastic_torque

class _breaking_torque_under_tension(_Formula, Protocol):
    """Breaking torque left beside a preload (lower bound).

    breaking_torque M_B [N.m], preload F_M [N], breaking_load F_m [N] -> torque T [N.m]
    """
    @overload
    def __call__(self, breaking_torque: _Number, preload: _Number, breaking_load: _Number) -> float: ...
    @overload
    def __call__(self, breaking_torque: _Numbers, preload: _Numbers, breaking_load: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, breaking_torque: Any, preload: Any, breaking_load: Any, **options: Any) -> Any: ...

breaking_torque_under_tension: _breaking_torque_under_tension

class _shearing_torque_at_head(_Formula, Protocol):
    """Torque at the head at which the shank shears.

    breaking_torque M_B [N.m], preload F_M [N], breaking_load F_m [N], bearing_friction mu_K [1], bearing_growth f_b [1], bearing_diameter D_Km [m] -> torque T_S [N.m]
    """
    @overload
    def __call__(self, breaking_torque: _Number, preload: _Number, breaking_load: _Number, bearing_friction: _Number, bearing_growth: _Number, bearing_diameter: _Number) -> float: ...
    @overload
    def __call__(self, breaking_torque: _Numbers, preload: _Numbers, breaking_load: _Numbers, bearing_friction: _Numbers, bearing_growth: _Numbers, bearing_diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, breaking_torque: Any, preload: Any, breaking_load: Any, bearing_friction: Any, bearing_growth: Any, bearing_diameter: Any, **options: Any) -> Any: ...

shearing_torque_at_head: _shearing_torque_at_head

class _flank_lever(_Formula, Protocol):
    """Lever of the push on a corner of a hexagon.

    width_across_flats s [m], drive_clearance D [m], corner_loss w [m] -> flank_lever a [m]
    """
    @overload
    def __call__(self, width_across_flats: _Number, drive_clearance: _Number, corner_loss: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, drive_clearance: _Numbers, corner_loss: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, drive_clearance: Any, corner_loss: Any, **options: Any) -> Any: ...

flank_lever: _flank_lever

class _corner_play(_Formula, Protocol):
    """Turn of a tool on a hexagon from flats parallel to touch.

    width_across_flats s [m], drive_clearance D [m], corner_loss w [m] -> corner_play phi [rad]
    """
    @overload
    def __call__(self, width_across_flats: _Number, drive_clearance: _Number, corner_loss: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, drive_clearance: _Numbers, corner_loss: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, drive_clearance: Any, corner_loss: Any, **options: Any) -> Any: ...

corner_play: _corner_play

class _slipping_corner_loss(_Formula, Protocol):
    """Loss of the corners at which a six-point tool spins.

    width_across_flats s [m], drive_clearance D [m] -> corner_loss w [m]
    """
    @overload
    def __call__(self, width_across_flats: _Number, drive_clearance: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, drive_clearance: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, drive_clearance: Any, **options: Any) -> Any: ...

slipping_corner_loss: _slipping_corner_loss

class _twelve_point_slipping_corner_loss(_Formula, Protocol):
    """Loss of the corners at which a twelve-point tool spins.

    width_across_flats s [m], drive_clearance D [m] -> corner_loss w [m]
    """
    @overload
    def __call__(self, width_across_flats: _Number, drive_clearance: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, drive_clearance: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, drive_clearance: Any, **options: Any) -> Any: ...

twelve_point_slipping_corner_loss: _twelve_point_slipping_corner_loss

class _twelve_point_flank(_Formula, Protocol):
    """Length of flank beside a corner that a twelve-point tool reaches.

    width_across_flats s [m], drive_clearance D [m], corner_loss w [m] -> flank_length l_F [m]
    """
    @overload
    def __call__(self, width_across_flats: _Number, drive_clearance: _Number, corner_loss: _Number) -> float: ...
    @overload
    def __call__(self, width_across_flats: _Numbers, drive_clearance: _Numbers, corner_loss: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, width_across_flats: Any, drive_clearance: Any, corner_loss: Any, **options: Any) -> Any: ...

twelve_point_flank: _twelve_point_flank

class _rounding_torque(_Formula, Protocol):
    """Torque at which the corners of a drive give way (estimate).

    contact_pressure p_c [Pa], corners n_c [1], contact_length l_c [m], engaged_height h [m], flank_lever a [m] -> rounding_torque T_R [N.m]
    """
    @overload
    def __call__(self, contact_pressure: _Number, corners: _Number, contact_length: _Number, engaged_height: _Number, flank_lever: _Number) -> float: ...
    @overload
    def __call__(self, contact_pressure: _Numbers, corners: _Numbers, contact_length: _Numbers, engaged_height: _Numbers, flank_lever: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, contact_pressure: Any, corners: Any, contact_length: Any, engaged_height: Any, flank_lever: Any, **options: Any) -> Any: ...

rounding_torque: _rounding_torque

class _lobe_flank(_Formula, Protocol):
    """Depth of flank on which a six-lobed bit bears.

    outer_diameter d_a [m], inner_diameter d_i [m], drive_clearance D [m], corner_loss w [m] -> flank_length l_F [m]
    """
    @overload
    def __call__(self, outer_diameter: _Number, inner_diameter: _Number, drive_clearance: _Number, corner_loss: _Number) -> float: ...
    @overload
    def __call__(self, outer_diameter: _Numbers, inner_diameter: _Numbers, drive_clearance: _Numbers, corner_loss: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, outer_diameter: Any, inner_diameter: Any, drive_clearance: Any, corner_loss: Any, **options: Any) -> Any: ...

lobe_flank: _lobe_flank

class _lobe_lever(_Formula, Protocol):
    """Lever of the push on a lobe of a six-lobed bit.

    outer_diameter d_a [m], inner_diameter d_i [m], drive_clearance D [m], corner_loss w [m] -> flank_lever a [m]
    """
    @overload
    def __call__(self, outer_diameter: _Number, inner_diameter: _Number, drive_clearance: _Number, corner_loss: _Number) -> float: ...
    @overload
    def __call__(self, outer_diameter: _Numbers, inner_diameter: _Numbers, drive_clearance: _Numbers, corner_loss: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, outer_diameter: Any, inner_diameter: Any, drive_clearance: Any, corner_loss: Any, **options: Any) -> Any: ...

lobe_lever: _lobe_lever

class _thermal_opening(_Formula, Protocol):
    """Play that opens when the nut is hotter than the bolt.

    expansion alpha_T [1/K], diameter d [m], temperature_difference dT [K] -> opening u [m]
    """
    @overload
    def __call__(self, expansion: _Number, diameter: _Number, temperature_difference: _Number) -> float: ...
    @overload
    def __call__(self, expansion: _Numbers, diameter: _Numbers, temperature_difference: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, expansion: Any, diameter: Any, temperature_difference: Any, **options: Any) -> Any: ...

thermal_opening: _thermal_opening

class _opening_temperature(_Formula, Protocol):
    """Difference of temperature that opens a play.

    opening u [m], expansion alpha_T [1/K], diameter d [m] -> temperature_difference dT [K]
    """
    @overload
    def __call__(self, opening: _Number, expansion: _Number, diameter: _Number) -> float: ...
    @overload
    def __call__(self, opening: _Numbers, expansion: _Numbers, diameter: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, opening: Any, expansion: Any, diameter: Any, **options: Any) -> Any: ...

opening_temperature: _opening_temperature

class _thermal_load_loss(_Formula, Protocol):
    """Preload lost when the bolt alone is heated (rigid parts).

    expansion alpha_T [1/K], elastic_modulus E [Pa], stress_area A_s [m2], temperature_difference dT [K] -> load_loss dF [N]
    """
    @overload
    def __call__(self, expansion: _Number, elastic_modulus: _Number, stress_area: _Number, temperature_difference: _Number) -> float: ...
    @overload
    def __call__(self, expansion: _Numbers, elastic_modulus: _Numbers, stress_area: _Numbers, temperature_difference: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, expansion: Any, elastic_modulus: Any, stress_area: Any, temperature_difference: Any, **options: Any) -> Any: ...

thermal_load_loss: _thermal_load_loss

class _unloading_temperature(_Formula, Protocol):
    """Difference of temperature that takes a bolt's stress away.

    stress S [Pa], expansion alpha_T [1/K], elastic_modulus E [Pa] -> temperature_difference dT [K]
    """
    @overload
    def __call__(self, stress: _Number, expansion: _Number, elastic_modulus: _Number) -> float: ...
    @overload
    def __call__(self, stress: _Numbers, expansion: _Numbers, elastic_modulus: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, stress: Any, expansion: Any, elastic_modulus: Any, **options: Any) -> Any: ...

unloading_temperature: _unloading_temperature

class _shear_before_free_index(_Formula, Protocol):
    """Index of shearing before coming free.

    break_median m_B [N.m], break_variation V_B [1], free_median m_F [N.m], free_variation V_F [1] -> index beta [1]
    """
    @overload
    def __call__(self, break_median: _Number, break_variation: _Number, free_median: _Number, free_variation: _Number) -> float: ...
    @overload
    def __call__(self, break_median: _Numbers, break_variation: _Numbers, free_median: _Numbers, free_variation: _Numbers, **options: Any) -> NDArray[Any]: ...
    @overload
    def __call__(self, break_median: Any, break_variation: Any, free_median: Any, free_variation: Any, **options: Any) -> Any: ...

shear_before_free_index: _shear_before_free_index
