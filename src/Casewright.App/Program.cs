using Casewright.App.Commands;

return await RootCommands.Build().Parse(args).InvokeAsync();
