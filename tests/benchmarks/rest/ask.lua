-- Ever-changing requests: no two alike. Arguments: what to send (get, post, kept, ask), the path, the name of the scope or the tag.
local mode, path, extra = "get", "/", ""
local threads = 0
local count = 0

function setup(thread)
  threads = threads + 1
  thread:set("first", threads * 10000000)
end

function init(args)
  mode, path, extra = args[1], args[2], args[3] or ""
  count = first
  math.randomseed(first)
end

local function inputs()
  count = count + 1
  local depth = 2 + count % 1700 / 100 + math.floor(count / 1700) % 100 / 10000
  local rise = count % 311 / 100 + math.floor(count / 311) % 1000 / 100000
  return string.format("%.4f", depth), string.format("%.5f", rise)
end

function request()
  if mode == "kept" then
    return wrk.format("GET", path, { ["If-None-Match"] = extra })
  end
  local depth, rise = inputs()
  if mode == "get" then
    return wrk.format("GET", path .. "?depth=" .. depth .. "+m&bow_height=1.2+m&tide_rise=" .. rise .. "+m&" .. extra .. "=7")
  elseif mode == "ask" then
    return wrk.format("GET", path .. "?text=How+much+rode+in+" .. depth .. "+m+of+water+with+a+bow+height+of+1.2+m+and+" .. rise .. "+m+of+rise")
  end
  local body = string.format('{"depth": "%s m", "bow_height": "1.2 m", "tide_rise": "%s m", "scope": "7"}', depth, rise)
  return wrk.format("POST", path, { ["Content-Type"] = "application/json" }, body)
end
