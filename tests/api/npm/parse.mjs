import SwaggerParser from "@apidevtools/swagger-parser";
const api = await SwaggerParser.validate(process.argv[2]);
console.log(`${api.info.title}: ${Object.keys(api.paths).length} paths are valid`);
