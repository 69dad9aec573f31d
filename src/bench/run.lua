-- Stored runs, each from a set of three barrels and on a day taken by chance, as run.pgbench does; every request has its own id.
local thread = 0
function setup(t)
  t:set("number", thread)
  thread = thread + 1
end
function init(args)
  token = args[1]
  sets = tonumber(args[2])
  math.randomseed(os.time() + number * 7919)
end
local function id()
  return string.format("%04x%04x-%04x-4%03x-8%03x-%04x%04x%04x", math.random(0, 65535), math.random(0, 65535),
    math.random(0, 65535), math.random(0, 4095), math.random(0, 4095), math.random(0, 65535), math.random(0, 65535), math.random(0, 65535))
end
function request()
  local set = math.random(1, sets)
  local body = string.format([[{"on": "2026-06-%02d", "draws": [
    {"barrel": "R-%d-1", "weight": {"value": 10, "unit": "lb"}},
    {"barrel": "R-%d-2", "weight": {"value": 10, "unit": "lb"}},
    {"barrel": "R-%d-3", "weight": {"value": 10, "unit": "lb"}}],
    "fillTemperature": {"value": 185, "unit": "degF"}, "filterHoldUp": {"value": 0.4, "unit": "lb"}, "overfill": {"value": 1, "unit": "g"},
    "fills": [{"container": "QT", "count": 2}, {"container": "PT", "count": 6}, {"container": "HP", "count": 10},
              {"container": "G250", "count": 8}, {"container": "G100", "count": 5}],
    "transmittance": 57, "taste": "clean"}]], math.random(1, 28), set, set, set)
  return wrk.format("POST", "/api/canning/runs",
    {["Content-Type"] = "application/json", ["Authorization"] = "Bearer " .. token, ["Idempotency-Key"] = id()}, body)
end
