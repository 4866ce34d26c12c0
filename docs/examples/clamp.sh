tauten identify --socket 24mm
tauten thread --thread M16 --class 8.8
tauten clamp --socket 24mm --class 8.8 --torque 150N.m --condition oiled
tauten clamp --thread M16 --class 8.8 --torque 95lbf.ft --condition dry --face oiled --json
tauten torque --thread M16 --class 8.8 --condition oiled
tauten torque --thread M10x1.25 --class 10.9 --clamp-load 25kN --prevailing-torque 4N.m
tauten turn --thread M16 --class 8.8 --condition oiled --layer 20mm:grey_cast_iron --layer 35mm --snug-torque 60N.m --angle 60deg
tauten curve --thread M16 --class 8.8 --condition oiled --grip 55mm --snug-torque 60N.m
tauten reach --torque 130N.m --wrench-length 400mm --extension 100mm@30deg
tauten chart torque --condition oiled --format svg
tauten free --thread M16 --class 8.8 --socket 24mm --rust rusted --limit 300N.m --loosened freed:205N.m --loosened unmoved:210N.m
tauten formulas torque
tauten eval preload_from_torque torque=130N.m pitch=2mm pitch_diameter=14.7mm thread_friction=0.12 bearing_friction=0.12 bearing_diameter=20mm
tauten explain clamp --thread M16 --class 8.8 --torque 150N.m --condition oiled
