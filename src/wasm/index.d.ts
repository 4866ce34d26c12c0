/** Torque and tension of threaded fasteners. Numbers are SI; text carries its unit: 25e3 or "25kN". */

/** Wrong input: one sentence for the user. */
export class TautenError extends Error {
  /** What is at fault, "" where no single argument is. */
  readonly argument: string;
}

/** A number in SI, or text with its unit: "48N.m", "35lbf.ft", "5/8in". */
export type Input = number | string;
export type Inputs = Readonly<Record<string, Input>>;
export type Notation = "text" | "latex" | "algebra" | "mathml";

// ---- Jobs: written by src/tools/derived.py, do not edit.

/** What `identify` takes: which fastener it is, from the tool that fits or the mark on its head. */
export interface IdentifyJob {
  /** Socket or spanner that fits, or the width as measured. Example: 16mm */
  readonly socket?: string;
  /** Hexagon key that fits into the head. Example: 8mm */
  readonly key?: string;
  /** Number of the six-lobed bit that fits into the head. Example: 30 */
  readonly bit?: string;
  /** How far width and tool may differ; default: 0.3 mm, for keys 0. Example: 0.3mm */
  readonly worn?: string;
  /** What the mark of a property class looks like. Example: 10.9 */
  readonly property_class?: string;
}

/** What `thread` takes: all about a thread: sizes, limits, tools, what bolts and nuts bear. */
export interface ThreadJob {
  /** Designation of ISO 261: M16, M16x1.5, M16-6g. Example: M16 */
  readonly thread?: string;
  /** Only bolts of this class; default: all that are made today. Example: 8.8 */
  readonly property_class?: string;
}

/** What `clamp` takes: the clamp load that a torque leaves, its limits, and a verdict. */
export interface ClampJob {
  /** Setting of the wrench. Example: 48N.m */
  readonly torque?: string;
  /** The condition that the torque figure is meant for. Example: dry */
  readonly specified_condition?: string;
  /** Name of the joint. Example: "pump feet" */
  readonly name?: string;
  /** Socket or spanner that fits: 16mm, 5/8in. Example: 16mm */
  readonly socket?: string;
  /** Hexagon key that fits into the head, instead of a socket. Example: 8mm */
  readonly key?: string;
  /** Thread, if it is known; alone it has the head of ISO 4014. Example: M10x1.25 */
  readonly thread?: string;
  /** Standard of the turned head or nut. Example: "ISO 4014" */
  readonly head?: string;
  /** Mark on the head: property class; without it the weakest is assumed. Example: 10.9 */
  readonly property_class?: string;
  /** Share of the proof load that the suggested torque aims at. Example: 75% */
  readonly share?: string;
  /** What is on the threads; without it the band is wide. Example: oiled */
  readonly condition?: string;
  /** What is under head or nut, if not the same. Example: dry */
  readonly face_condition?: string;
  /** Coefficient in the thread, if measured: 0.12, or a band. Example: 0.08..0.12..0.16 */
  readonly thread_friction?: string;
  /** Coefficient under head or nut, if measured. Example: 0.08..0.12..0.16 */
  readonly bearing_friction?: string;
  /** yes or no: thread and face rub alike; default: if of one condition. Example: no */
  readonly friction_together?: string;
  /** Accuracy of the wrench; default: 6 % up to 10 N.m, 4 % above. Example: 4% */
  readonly wrench_accuracy?: string;
  /** Prevailing torque of a locking nut or insert. Example: 4N.m */
  readonly prevailing_torque?: string;
  /** Friction torque of the shank in its hole, where the head is turned. Example: 2N.m */
  readonly shank_torque?: string;
  /** Effective diameter of the bearing face, if not the standard's. Example: 13mm */
  readonly bearing_diameter?: string;
  /** A washer under the turned part: effective diameter, condition. Example: 26mm:oiled */
  readonly more_faces?: string | readonly string[];
  /** Torsion of the section: plastic (default) or elastic (before 2001). Example: plastic */
  readonly torsion?: string;
  /** What head or nut bears on; without it pressure is not checked. Example: grey_cast_iron */
  readonly seat_material?: string;
  /** Class of the nut; default: the one that matches the bolt. Example: 8 */
  readonly nut_class?: string;
  /** What the thread is tapped in, if not a nut. Example: cast_aluminium */
  readonly tapped_material?: string;
  /** Engaged thread in what it is tapped in. Example: 20mm */
  readonly engagement?: string;
}

/** What `torque` takes: the torque for a wanted clamp load, or else the suggested one. */
export interface TorqueJob {
  /** Name of the joint. Example: "pump feet" */
  readonly name?: string;
  /** Socket or spanner that fits: 16mm, 5/8in. Example: 16mm */
  readonly socket?: string;
  /** Hexagon key that fits into the head, instead of a socket. Example: 8mm */
  readonly key?: string;
  /** Thread, if it is known; alone it has the head of ISO 4014. Example: M10x1.25 */
  readonly thread?: string;
  /** Standard of the turned head or nut. Example: "ISO 4014" */
  readonly head?: string;
  /** Mark on the head: property class; without it the weakest is assumed. Example: 10.9 */
  readonly property_class?: string;
  /** Share of the proof load that the suggested torque aims at. Example: 75% */
  readonly share?: string;
  /** What is on the threads; without it the band is wide. Example: oiled */
  readonly condition?: string;
  /** What is under head or nut, if not the same. Example: dry */
  readonly face_condition?: string;
  /** Coefficient in the thread, if measured: 0.12, or a band. Example: 0.08..0.12..0.16 */
  readonly thread_friction?: string;
  /** Coefficient under head or nut, if measured. Example: 0.08..0.12..0.16 */
  readonly bearing_friction?: string;
  /** yes or no: thread and face rub alike; default: if of one condition. Example: no */
  readonly friction_together?: string;
  /** Accuracy of the wrench; default: 6 % up to 10 N.m, 4 % above. Example: 4% */
  readonly wrench_accuracy?: string;
  /** Prevailing torque of a locking nut or insert. Example: 4N.m */
  readonly prevailing_torque?: string;
  /** Friction torque of the shank in its hole, where the head is turned. Example: 2N.m */
  readonly shank_torque?: string;
  /** Effective diameter of the bearing face, if not the standard's. Example: 13mm */
  readonly bearing_diameter?: string;
  /** A washer under the turned part: effective diameter, condition. Example: 26mm:oiled */
  readonly more_faces?: string | readonly string[];
  /** Torsion of the section: plastic (default) or elastic (before 2001). Example: plastic */
  readonly torsion?: string;
  /** What head or nut bears on; without it pressure is not checked. Example: grey_cast_iron */
  readonly seat_material?: string;
  /** Class of the nut; default: the one that matches the bolt. Example: 8 */
  readonly nut_class?: string;
  /** What the thread is tapped in, if not a nut. Example: cast_aluminium */
  readonly tapped_material?: string;
  /** Engaged thread in what it is tapped in. Example: 20mm */
  readonly engagement?: string;
  /** Clamp load that is wanted. Example: 25kN */
  readonly clamp_load?: string;
}

/** What `turn` takes: how far to turn from snug for a clamp load, or what an angle leaves. */
export interface TurnJob {
  /** Angle to be turned from snug; without it that is the answer. Example: 90deg */
  readonly angle?: string;
  /** The angle is read at the handle, with the bars in between. Example: yes */
  readonly angle_at_handle?: string;
  /** Clamp load that is wanted. Example: 60kN */
  readonly clamp_load?: string;
  /** Share of the proof load that is wanted; default: 75 %. Example: 75% */
  readonly share?: string;
  /** Share of yield that is wanted while the wrench turns. Example: 90% */
  readonly utilisation?: string;
  /** Maker or code tightens past yield. Example: yes */
  readonly to_yield?: string;
  /** Straight bar between handle and fastener: section, length, size. Example: square:250mm:12.7mm */
  readonly bars?: string | readonly string[];
  /** Accuracy of the snug torque; 6% up to 10 N.m, 4% above. Example: 4% */
  readonly wrench_accuracy?: string;
  /** How far the angle may be off; 5deg, an estimate. Example: 5deg */
  readonly angle_tolerance?: string;
  /** How far the resilience may be off; 10% or 15%, estimates. Example: 10% */
  readonly resilience_tolerance?: string;
  /** By how much a bolt may exceed its class; 20%, an estimate. Example: 20% */
  readonly strength_surplus?: string;
  /** R_z of the roughest face, for embedding; default: 0.01mm. Example: 0.016mm */
  readonly roughness?: string;
  /** The working load acts across the bolt. Example: yes */
  readonly load_across?: string;
  /** By how much the bolt is warmer in service. Example: 60K */
  readonly bolt_warming?: string;
  /** By how much the layers are warmer in service. Example: 60K */
  readonly plate_warming?: string;
  /** Share that soft layers take off with time. Example: 10% */
  readonly creep_share?: string;
  /** Taken off by bolts that are tightened later. Example: 2kN */
  readonly neighbours?: string;
  /** Load that pulls the joint apart. Example: 15kN */
  readonly working_load?: string;
  /** Where it acts: 1 under head and nut, 0 in the parting line. Example: 0.5 */
  readonly load_introduction?: string;
  /** Compare with the turns of structural bolting. Example: yes */
  readonly structural?: string;
  /** Declared mean k-value of a structural bolt set, class K1 or K2. Example: 0.125 */
  readonly k_factor?: string;
  /** Outer faces that slope, up to 1 in 20, for that comparison. Example: 1 */
  readonly sloping_faces?: string;
  /** Name of the joint. Example: "pump foot" */
  readonly name?: string;
  /** Thread. Example: M16 */
  readonly thread?: string;
  /** Mark on the head; without it the weakest class is assumed. Example: 8.8 */
  readonly property_class?: string;
  /** Standard of head or nut; default: ISO 4014. Example: "ISO 4014" */
  readonly head?: string;
  /** through_bolt, tapped_hole or stud; default: through_bolt. Example: through_bolt */
  readonly kind?: string;
  /** Length of the bolt; default: the shortest that reaches. Example: 80mm */
  readonly length?: string;
  /** Diameter of a reduced shank. Example: 13mm */
  readonly shank_diameter?: string;
  /** Clamped layer from the head down: thickness, material, width, hole. Example: 20mm:grey_cast_iron:70mm */
  readonly layers?: string | readonly string[];
  /** So much steel is clamped, instead of layers. Example: 55mm */
  readonly grip?: string;
  /** Washers of ISO 7089: 1 under the turned face, 2 at both ends. Example: 1 */
  readonly washers?: string;
  /** What the tapped hole is in; default: steel. Example: grey_cast_iron */
  readonly tapped_material?: string;
  /** Engaged thread in a tapped hole; default: what the bolt needs. Example: 20mm */
  readonly engagement?: string;
  /** Class of the nut; default: the one that matches the bolt. Example: 8 */
  readonly nut_class?: string;
  /** Height of the nut; default: ISO 4032. Example: 14.8mm */
  readonly nut_height?: string;
  /** Model of the layers; default: chosen by their width. Example: deformation_cone */
  readonly plate_model?: string;
  /** Torque that closes all gaps; from there the angle counts. Example: 60N.m */
  readonly snug_torque?: string;
  /** What is on the threads; without it the band is wide. Example: oiled */
  readonly condition?: string;
  /** What is under head or nut, if not the same. Example: dry */
  readonly face_condition?: string;
  /** Coefficient in the thread, if measured: 0.12, or a band. Example: 0.08..0.12..0.16 */
  readonly thread_friction?: string;
  /** Coefficient under head or nut, if measured. Example: 0.08..0.12..0.16 */
  readonly bearing_friction?: string;
  /** Prevailing torque of a locking nut or insert. Example: 4N.m */
  readonly prevailing_torque?: string;
  /** Effective diameter of the bearing face, if not standard. Example: 20mm */
  readonly bearing_diameter?: string;
}

/** What `curve` takes: torque and preload against the angle, from snug to yield and beyond. */
export interface CurveJob {
  /** Name of the joint. Example: "pump foot" */
  readonly name?: string;
  /** Thread. Example: M16 */
  readonly thread?: string;
  /** Mark on the head; without it the weakest class is assumed. Example: 8.8 */
  readonly property_class?: string;
  /** Standard of head or nut; default: ISO 4014. Example: "ISO 4014" */
  readonly head?: string;
  /** through_bolt, tapped_hole or stud; default: through_bolt. Example: through_bolt */
  readonly kind?: string;
  /** Length of the bolt; default: the shortest that reaches. Example: 80mm */
  readonly length?: string;
  /** Diameter of a reduced shank. Example: 13mm */
  readonly shank_diameter?: string;
  /** Clamped layer from the head down: thickness, material, width, hole. Example: 20mm:grey_cast_iron:70mm */
  readonly layers?: string | readonly string[];
  /** So much steel is clamped, instead of layers. Example: 55mm */
  readonly grip?: string;
  /** Washers of ISO 7089: 1 under the turned face, 2 at both ends. Example: 1 */
  readonly washers?: string;
  /** What the tapped hole is in; default: steel. Example: grey_cast_iron */
  readonly tapped_material?: string;
  /** Engaged thread in a tapped hole; default: what the bolt needs. Example: 20mm */
  readonly engagement?: string;
  /** Class of the nut; default: the one that matches the bolt. Example: 8 */
  readonly nut_class?: string;
  /** Height of the nut; default: ISO 4032. Example: 14.8mm */
  readonly nut_height?: string;
  /** Model of the layers; default: chosen by their width. Example: deformation_cone */
  readonly plate_model?: string;
  /** Torque that closes all gaps; from there the angle counts. Example: 60N.m */
  readonly snug_torque?: string;
  /** What is on the threads; without it the band is wide. Example: oiled */
  readonly condition?: string;
  /** What is under head or nut, if not the same. Example: dry */
  readonly face_condition?: string;
  /** Coefficient in the thread, if measured: 0.12, or a band. Example: 0.08..0.12..0.16 */
  readonly thread_friction?: string;
  /** Coefficient under head or nut, if measured. Example: 0.08..0.12..0.16 */
  readonly bearing_friction?: string;
  /** Prevailing torque of a locking nut or insert. Example: 4N.m */
  readonly prevailing_torque?: string;
  /** Effective diameter of the bearing face, if not standard. Example: 20mm */
  readonly bearing_diameter?: string;
  /** Where the curve ends; default: at the uniform elongation. Example: 120deg */
  readonly end_angle?: string;
  /** Points of each curve. Example: 200 */
  readonly points?: string;
  /** Yield point: slope of the torque down to this share; default: 50%. Example: 50% */
  readonly slope_share?: string;
}

/** What `reach` takes: what to set on a wrench with extensions and the like, and what arrives. */
export interface ReachJob {
  /** Torque that is wanted at the fastener. Example: 130N.m */
  readonly torque?: string;
  /** Setting of the wrench, instead of the torque. Example: 104N.m */
  readonly setting?: string;
  /** From the drive to the middle of the hand; default: 300 mm. Example: 400mm */
  readonly wrench_length?: string;
  /** Crowfoot or the like, not a bar: length and angle; each in its order. Example: 100mm@30deg */
  readonly extensions?: string | readonly string[];
  /** How far the hand stands beyond the mark; negative: nearer to the drive. Example: 20mm */
  readonly hand_offset?: string;
  /** Share of the pull that a second hand takes at the wrench head. Example: 30% */
  readonly support_share?: string;
  /** Wrench out of the plane of turning. Example: 3deg */
  readonly tilt?: string;
  /** Bend of a universal joint. Example: 15deg */
  readonly universal_joint?: string;
  /** Ratio of a torque multiplier. Example: 4 */
  readonly multiplier_ratio?: string;
  /** Its efficiency; 1 if the ratio is a torque ratio that the maker states. Example: 90% */
  readonly multiplier_efficiency?: string;
  /** By how much its efficiency differs, full width. Example: 4% */
  readonly efficiency_range?: string;
  /** From the axis of the multiplier to where its arm rests. Example: 300mm */
  readonly reaction_arm?: string;
  /** Straight bar: square, round or hexagon, length, size. Example: square:250mm:12.7mm */
  readonly bars?: string | readonly string[];
  /** Smallest square in the line. Example: 12.7mm */
  readonly drive_square?: string;
  /** setting (clicks) or indicating. Example: setting */
  readonly wrench_type?: string;
  /** Letter of ISO 6789-1. Example: A */
  readonly wrench_class?: string;
  /** Lowest mark of the scale. Example: 40N.m */
  readonly scale_low?: string;
  /** Maximum torque of the wrench. Example: 200N.m */
  readonly scale_high?: string;
  /** Between two marks or digits. Example: 1N.m */
  readonly division?: string;
  /** The handle has a hinge. Example: yes */
  readonly hinged_handle?: string;
  /** A pipe is on the handle. Example: yes */
  readonly pipe_on_handle?: string;
  /** How far the hand may be off; default: like those below an estimate. Example: 20mm */
  readonly tolerance_hand?: string;
  /** How far the reach of the extension may be off. Example: 1mm */
  readonly tolerance_extension?: string;
  /** How far its angle may be off. Example: 3deg */
  readonly tolerance_extension_angle?: string;
  /** How far the pull may be off the square. Example: 10deg */
  readonly tolerance_pull_angle?: string;
  /** How far the share of the second hand may be off. Example: 10% */
  readonly tolerance_support_share?: string;
  /** What speed, jerks and stopping may do. Example: 2% */
  readonly tolerance_operator?: string;
}

/** What `free` takes: whether a stuck fastener comes free, where to stop, what to do next. */
export interface FreeJob {
  /** Thread. Example: M16 */
  readonly thread?: string;
  /** Mark on the head: property class. Example: 8.8 */
  readonly property_class?: string;
  /** Socket or spanner that fits; default: that of ISO 4014. Example: 24mm */
  readonly socket?: string;
  /** Hexagon key that fits into the head, instead of a socket. Example: 14mm */
  readonly key?: string;
  /** Width of the head, instead of a socket that fits. Example: 24mm */
  readonly width_across_flats?: string;
  /** Number of the six-lobed bit that fits, instead of a socket. Example: 30 */
  readonly bit?: string;
  /** State of rust, from clean to heavy_rust; default: rusted. Example: rusted */
  readonly rust?: string;
  /** Torque that will not be exceeded. Example: 200N.m */
  readonly limit?: string;
  /** six_point, else twelve_point, open_end, internal_hexagon, hexalobular. Example: six_point */
  readonly drive?: string;
  /** One of the flange, and its torque; freed:60N.m:treated if after done. Example: freed:85N.m */
  readonly loosened?: string | readonly string[];
  /** Torque that this very bolt was pulled to and has not moved. Example: 150N.m */
  readonly held?: string;
  /** It was pulled to it before what was done, not after. Example: yes */
  readonly held_untreated?: string;
  /** Aid already used, in order: fluid:24h, heat:150K, brush, .... Example: fluid:24h */
  readonly aids?: string | readonly string[];
  /** What limits heat, such as fire_or_burst or rubber_or_plastic. Example: fire_or_burst */
  readonly surroundings?: string | readonly string[];
  /** yes or no: quenched and tempered; default: as the class. Example: yes */
  readonly quenched?: string;
  /** The bolt will be used again. Example: yes */
  readonly reused?: string;
  /** What it was tightened to; without it a share of yield with a wide band. Example: 55kN */
  readonly preload?: string;
  /** Years in place; goes with first-year-loss. Example: 20 */
  readonly years?: string;
  /** Corrosion of the first year at this place. Example: 0.05mm */
  readonly first_year_loss?: string;
  /** Radial wear of the corners, or of the ridges between lobes. Example: 0.5mm */
  readonly corner_loss?: string;
  /** Play of the tool; default: 0.2 mm, inside a head 0.1 mm. Example: 0.2mm */
  readonly drive_clearance?: string;
  /** Smallest square drive in the chain. Example: 12.7mm */
  readonly drive_square?: string;
  /** Length of the handle, if turned by hand. Example: 600mm */
  readonly handle_length?: string;
  /** Median pull of the hand. Example: 350N */
  readonly hand_force?: string;
  /** Scatter of that pull. Example: 35% */
  readonly hand_variation?: string;
  /** Accepted chance of shearing. Example: 5% */
  readonly shear_risk?: string;
  /** Chance of release at which no stronger aid is looked for. Example: 90% */
  readonly wanted_chance?: string;
  /** Coefficient in the thread of the clean joint. Example: 0.14 */
  readonly thread_friction?: string;
  /** Coefficient under the head of the clean joint. Example: 0.14 */
  readonly bearing_friction?: string;
  /** Prevailing torque of a locking nut or insert. Example: 4N.m */
  readonly prevailing_torque?: string;
  /** Engaged length of thread; default: 0.8 d. Example: 13mm */
  readonly engaged_length?: string;
  /** yes or no: the thread is in the part; default: only inside a head. Example: yes */
  readonly tapped?: string;
  /** right or left: which way the thread turns; asked for if not given. Example: left */
  readonly thread_direction?: string;
  /** Height that the tool engages; default: 0.64 d, inside a head 0.5 d. Example: 10mm */
  readonly head_height?: string;
  /** Effective diameter of the bearing face. Example: 20mm */
  readonly bearing_diameter?: string;
  /** What surrounds the thread; default: the width across flats. Example: 24mm */
  readonly nut_diameter?: string;
  /** Yield strength of the nut; default: as the bolt. Example: 600MPa */
  readonly nut_yield?: string;
  /** Diameter, instead of a thread of the tables. Example: 16mm */
  readonly diameter?: string;
  /** Pitch, instead of a thread of the tables. Example: 2mm */
  readonly pitch?: string;
  /** Tensile strength, instead of a class. Example: 800MPa */
  readonly tensile_strength?: string;
  /** Yield strength, instead of a class. Example: 640MPa */
  readonly yield_strength?: string;
  /** Breaking shear stress over tensile strength, instead of a class. Example: 0.8 */
  readonly torsion_ratio?: string;
  /** Trials of the simulation. Example: 200000 */
  readonly trials?: string;
  /** Seed of the simulation; the same gives the same answer. Example: 1 */
  readonly seed?: string;
  /** The page has how each step is done: what, how long, what to watch. Example: yes */
  readonly instructions?: string;
}

/** What `pattern` takes: which pattern the holes are, how many ways round, which drillings. */
export interface PatternJob {
  /** Holes: circle:8:180mm, or places 0mm:0mm;120mm:0mm. Example: circle:8:180mm */
  readonly positions?: string;
  /** Distances of neighbours, clockwise, back to hole 1. Example: 80mm;81mm;79mm */
  readonly chords?: string;
  /** Chords are between near or far edges of the holes, not centres. Example: near */
  readonly edges?: string;
  /** A standard drilling by name, instead of positions. Example: EN 1092-1 PN16 DN100 */
  readonly name?: string;
  /** Diameter of the holes: it narrows the candidates. Example: 18mm */
  readonly hole?: string;
  /** Outside diameter of the flange, which does so as well. Example: 220mm */
  readonly outside?: string;
  /** Shaft height of a motor, which does so as well. Example: 132mm */
  readonly height?: string;
  /** How far off a hole may measure; default: 0.5 mm, a caliper. Example: 0.5mm */
  readonly tolerance?: string;
  /** Holes that the part is to go on, as in pattern. Example: circle:8:180mm */
  readonly on?: string;
  /** It goes on turned over. Example: yes */
  readonly flipped?: string;
}

/** What `group` takes: what each bolt of a group carries, by named models beside each other. */
export interface GroupJob {
  /** Bolts: rectangle:200mm:150mm, or places 0mm:0mm;120mm:0mm. Example: rectangle:200mm:150mm */
  readonly positions?: string;
  /** Force in the plane of the joint: to the right, up. Example: 0kN:-16kN */
  readonly load?: string;
  /** A place on its line; default: the centroid of the bolts. Example: 425mm:0mm */
  readonly at?: string;
  /** Torque in the plane, counter-clockwise, on top of the load's. Example: 2kN.m */
  readonly torque?: string;
  /** Of bolts that differ, elastic model: areas or clamp loads. Example: 1;1;2;2 */
  readonly weights?: string;
  /** Pull across the plane at the centroid; negative: presses. Example: 12kN */
  readonly force?: string;
  /** Moments that pull on the right bolts and the top bolts. Example: 0N.m:2kN.m */
  readonly moment?: string;
  /** Corners of the part, in order; for contact and tilting. Example: -85mm:-145mm;85mm:-145mm;85mm:145mm;-85mm:145mm */
  readonly outline?: string;
  /** Diameter of a round part, instead of outline. Example: 220mm */
  readonly outside?: string;
  /** The moment may act in any direction: the worst. Example: yes */
  readonly worst_clocking?: string;
  /** Stress area of one bolt; for contact. Example: 157mm2 */
  readonly bolt_area?: string;
  /** Modulus of bolts over support; concrete 8 to 15; default: 1. Example: 10 */
  readonly modular_ratio?: string;
  /** How the load is shared; default: elastic and centroid. Example: contact */
  readonly model?: string;
  /** The same for the pull, where model is that of the shear. Example: contact */
  readonly tension_model?: string;
  /** Preload of every bolt: adds bolt and clamp loads. Example: 40kN */
  readonly preload?: string;
  /** Share of a pull that reaches the bolt; default: 0.2. Example: 0.2 */
  readonly load_factor?: string;
  /** Between the parts: adds the utilisation against slip. Example: 0.15 */
  readonly friction?: string;
}

/** What `sequence` takes: in which order and passes to tighten a joint, and how to undo it. */
export interface SequenceJob {
  /** Bolts: circle:8:160mm, places 0mm:0mm;120mm:0mm, or their number. Example: circle:8:160mm */
  readonly pattern?: string;
  /** How the order is found; default: crosswise. Example: crosswise */
  readonly method?: string;
  /** The stiffest place, for middle_out; default: the centroid. Example: 0mm:0mm */
  readonly start?: string;
  /** An order of your own, by numbers of the bolts. Example: 1;3;2;4 */
  readonly order?: string;
  /** Numbers written on the flange, going clockwise. Example: 1;3;2;4 */
  readonly labels?: string;
  /** Bolts that several tools tighten at once. Example: 2 */
  readonly at_once?: string;
  /** Of the full torque in each pass; default: 0.3, 0.6, 1. Example: 30%;60%;100% */
  readonly shares?: string;
  /** Circular rounds at the full torque after that; default: 1. Example: 1 */
  readonly rounds?: string;
  /** Maximum share, where the maker asks for more than all; default: 1. Example: 110% */
  readonly most?: string;
  /** The full torque. Example: 120N.m */
  readonly torque?: string;
  /** Pressure may be trapped. Example: yes */
  readonly pressurised?: string;
  /** Where the person stands: bolts away from it come first. Example: 0mm:-500mm */
  readonly person?: string;
  /** What a neighbour loses per load gained; or rows 1,0.2;0.2,1. Example: 0.2 */
  readonly interaction?: string;
  /** Flange and gasket instead, for an order of magnitude. Example: ring_width:50mm;ring_thickness:20mm;gasket_width:20mm;gasket_thickness:2mm;gasket_modulus:300MPa;bolt_length:55mm;bolt_area:157mm2 */
  readonly gasket?: string;
  /** Or loads measured: of all bolts, after each turn of the order. Example: 40kN,0kN;36kN,40kN */
  readonly readings?: string;
  /** Load that the full torque gives; with interaction. Example: 40kN */
  readonly load?: string;
  /** How far below the load a bolt may end: passes needed. Example: 5% */
  readonly shortfall?: string;
  /** Yield load of a bolt, for the loads of a one-pass plan. Example: 70kN */
  readonly limit?: string;
  /** Standard deviation of the load that stays with a bolt. Example: 10% */
  readonly friction_scatter?: string;
  /** The same, of each act anew. Example: 5% */
  readonly act_scatter?: string;
  /** The same, of the wrench. Example: 2% */
  readonly wrench_scatter?: string;
  /** Trials of the simulation of scatter; default: 10000. Example: 10000 */
  readonly trials?: string;
  /** Seed of its random numbers; default: 1. Example: 1 */
  readonly seed?: string;
}

/** What `prying` takes: what a plate that bends at its bolts leaves of their strength. */
export interface PryingJob {
  /** AISC form: length of plate for one bolt. Example: 70mm */
  readonly tributary?: string;
  /** T-stub of EN 1993-1-8 instead: l_eff of all rows. Example: 200mm */
  readonly effective_length?: string;
  /** Bolt axis to web; T-stub: m, to 0.8 of the fillet. Example: 49mm */
  readonly bolt_to_web?: string;
  /** Bolt axis to the free edge. Example: 41mm */
  readonly bolt_to_edge?: string;
  /** Of the plate; left out: the one that the pull needs. Example: 25mm */
  readonly thickness?: string;
  /** AISC: F_u of the plate; T-stub: f_y/gamma_M0. Example: 250MPa */
  readonly plate_strength?: string;
  /** Of one bolt in tension, with the code's factors. Example: 163kN */
  readonly bolt_strength?: string;
  /** How many share the pull; default: 2. Example: 2 */
  readonly bolts?: string;
  /** On all bolts together. Example: 111.6kN */
  readonly pull?: string;
  /** AISC form: of the bolt. Example: 20mm */
  readonly diameter?: string;
  /** AISC form: of its hole. Example: 22mm */
  readonly hole?: string;
  /** AISC form: on the plate; default: 0.9. Example: 0.9 */
  readonly resistance_factor?: string;
  /** T-stub: outside diameter of the washer, makes mode 1 stronger. Example: 37mm */
  readonly washer?: string;
  /** T-stub: length of the bolts that stretches, to see if edges press. Example: 60mm */
  readonly elongation_length?: string;
  /** T-stub: stress area of one bolt, with that. Example: 245mm2 */
  readonly bolt_area?: string;
}

// ---- End of the jobs.

/** What each question takes. */
export interface Jobs {
  identify: IdentifyJob;
  thread: ThreadJob;
  clamp: ClampJob;
  torque: TorqueJob;
  turn: TurnJob;
  curve: CurveJob;
  reach: ReachJob;
  free: FreeJob;
  pattern: PatternJob;
  group: GroupJob;
  sequence: SequenceJob;
  prying: PryingJob;
}

/** What JSON can hold. */
export type Answer = null | boolean | number | string | Answer[] | { [name: string]: Answer };

export interface Range {
  /** null: no bound */
  low: number | null;
  high: number | null;
  excludes_low: boolean;
}

export interface Argument {
  symbol: string;
  /** SI; "" for a plain number */
  unit: string;
  shop_unit: string;
  shop_unit_in_si: number;
  /** how to write a value */
  example: string;
  /** outside it there is no value */
  domain: Range;
  /** outside it the value carries a warning */
  validity: Range;
}

export interface Formula {
  summary: string;
  inputs: Record<string, Argument>;
  output: Argument & { name: string };
  sources: { document: string; place: string; seen: "in_print" | "once" | "memory" | "judgement" }[];
}

export interface Question {
  summary: string;
  /** By what the command line calls them; name: what the library and `Jobs` do. words: all that it takes, if it takes words only;
   * repeats: it may be said again */
  keys: Record<string, { name: string; example: string; help: string; words: string[]; repeats: boolean }>;
}

/** What the module has; a smaller one has no formulas or fewer questions. */
export interface Catalogue {
  version: string;
  formulas: Record<string, Formula>;
  questions: Record<string, Question>;
}

/** Low, nominal and high value of what rests on friction. */
export interface Band {
  low: number;
  nominal: number;
  high: number;
}

export interface Value {
  value: number;
  unit: string;
  /** an input outside the range that the source states, or null */
  warning: string | null;
}

export interface Gradient {
  value: number;
  slopes: Record<string, number>;
  warning: string | null;
}

export interface Tauten {
  readonly version: string;
  readonly catalogue: Catalogue;
  /** names of all formulas */
  readonly formulas: string[];
  /** Reads text with its unit for an input of a formula, "48N.m". @throws TautenError for another dimension */
  read(formula: string, input: string, text: string): number;
  /** @throws TautenError where the formula has no value */
  evaluate(formula: string, inputs: Inputs): Value;
  /** The value and its derivatives by each input. @throws TautenError where the formula has no value */
  gradient(formula: string, inputs: Inputs): Gradient;
  /** Row by row; an input is a column of numbers or one for all rows. NaN where there is no value. */
  columns(formula: string, inputs: Readonly<Record<string, Input | ArrayLike<number>>>): Float64Array;
  /** The formula itself. */
  text(formula: string, notation?: Notation): string;
  /** The derivation: formula, values put in, result, source. As "mathml" it is HTML for a page. */
  explain(formula: string, inputs: Inputs, notation?: Exclude<Notation, "algebra">): string;
  /**
   * Asks a whole question: ask("clamp", { thread: "M10", torque: "48N.m", condition: "oiled" }).
   * The catalogue lists the keys.
   * All estimates: no answer is a release for service.
   * @throws TautenError for words that are not understood, and for a question that the module does not have
   */
  ask<Name extends keyof Jobs>(question: Name, job: Jobs[Name]): { [name: string]: Answer };
  /**
   * The same answer laid out for people, in the units that are typed: page("clamp", { ... }). As "html" it is a fragment
   * for a page, without a script.
   * @throws TautenError as `ask`
   */
  page<Name extends keyof Jobs>(question: Name, job: Jobs[Name], format?: "text" | "markdown" | "html"): string;
}

/**
 * With everything; with all formulas and no questions; with the questions of one topic and no formulas:
 * clamp has clamp, torque and identify, group has group, sequence and prying, each other one has the question of its name.
 */
export type ModuleName = "tauten" | "formulas" | "clamp" | "thread" | "turn" | "curve" | "reach" | "free" | "pattern" | "group";

/** @param source the name of a module beside the loader, an address, bytes or a compiled module; without it, "tauten" */
export function load(source?: ModuleName | string | URL | BufferSource | WebAssembly.Module): Promise<Tauten>;
