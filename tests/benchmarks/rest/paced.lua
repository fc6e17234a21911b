-- The same requests at a set rate: each connection pauses between two of them, for a time drawn evenly about the mean.
local here = debug.getinfo(1, "S").source:match("@?(.*)paced.lua$")
dofile(here .. "ask.lua")

local mean = 0
local plain_init = init

function init(args)
  plain_init(args)
  mean = tonumber(args[4])
end

function delay()
  return math.random(0, 2 * mean)
end
