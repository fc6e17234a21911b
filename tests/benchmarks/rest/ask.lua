-- Ever-changing requests: no two alike. Arguments: what to send (get, post, kept, ask), the path, the entity tag.
local mode, path, tag = "get", "/", ""
local count = 0
local base = 0

function setup(thread)
  base = base + 1
  thread:set("base", base * 10000000)
end

function init(args)
  mode, path, tag = args[1], args[2], args[3] or ""
  count = base
end

local function inputs()
  count = count + 1
  local depth = 200 + count % 1700
  local rise = count % 311
  return string.format("%.2f", depth / 100 + (math.floor(count / 1700) % 100) / 10000), string.format("%.3f", rise / 100 + (math.floor(count / 311) % 1000) / 100000)
end

function request()
  if mode == "kept" then
    return wrk.format("GET", path, { ["If-None-Match"] = tag })
  end
  local depth, rise = inputs()
  if mode == "get" then
    return wrk.format("GET", path .. "?depth=" .. depth .. "+m&bow_height=1.2+m&tide_rise=" .. rise .. "+m&" .. tag .. "=7")
  elseif mode == "ask" then
    return wrk.format("GET", path .. "?text=How+much+rode+in+" .. depth .. "+m+of+water+with+the+bow+1.2+m+up+and+" .. rise .. "+m+of+tide+to+come")
  end
  local body = string.format('{"depth": "%s m", "bow_height": "1.2 m", "tide_rise": "%s m", "scope": "7"}', depth, rise)
  return wrk.format("POST", path, { ["Content-Type"] = "application/json" }, body)
end
