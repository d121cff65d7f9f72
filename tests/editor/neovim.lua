-- One proofreading session with Neovim's own language client; started by neovim.ts.
--
-- Opens the file named in $EDITOR_CHECK, waits for diagnostics, hovers over the first error, chooses the first
-- code action there, waits until that diagnostic is gone, writes the file, and shuts the server down.
-- Prints one JSON object to standard output.

local request = vim.json.decode(os.getenv('EDITOR_CHECK'))
local patience = 60000

local exit
local client_id

-- Neovim counts columns in bytes; the protocol, and this report, in UTF-16 code units. Both count from 0.
local function place(line, byte_column)
  local text = vim.api.nvim_buf_get_lines(0, line, line + 1, false)[1] or ''
  local _, character = vim.str_utfindex(text, math.min(byte_column, #text))
  return { line = line, character = character }
end

local severities = { 'error', 'warning', 'info', 'hint' }

local function diagnostics()
  local found = vim.tbl_map(function(diagnostic)
    return {
      start = place(diagnostic.lnum, diagnostic.col),
      ['end'] = place(diagnostic.end_lnum, diagnostic.end_col),
      severity = severities[diagnostic.severity],
      message = diagnostic.message,
      source = diagnostic.source,
      code = diagnostic.code,
    }
  end, vim.diagnostic.get(0))
  table.sort(found, function(a, b)
    if a.start.line ~= b.start.line then
      return a.start.line < b.start.line
    end
    return a.start.character < b.start.character
  end)
  return found
end

local function first_error()
  for _, diagnostic in ipairs(diagnostics()) do
    if diagnostic.severity == 'error' then
      return diagnostic
    end
  end
end

local function still_there(wanted)
  for _, diagnostic in ipairs(diagnostics()) do
    if vim.deep_equal(diagnostic.start, wanted.start) and diagnostic.message == wanted.message then
      return true
    end
  end
  return false
end

local function wait_for(what, condition)
  if not vim.wait(patience, condition, 50) then
    error(what .. ' did not come. Diagnostics: ' .. vim.fn.json_encode(diagnostics()))
  end
end

local function start_client()
  client_id = vim.lsp.start_client({
    name = 'measure-twice',
    cmd = request.server,
    cmd_cwd = request.root,
    root_dir = request.root,
    on_exit = function(code, signal)
      exit = { code = code, signal = signal }
    end,
  })
  assert(client_id, 'the server did not start')
  assert(vim.lsp.buf_attach_client(0, client_id), 'the server was not attached to the buffer')
end

local function put_cursor(position)
  local text = vim.api.nvim_buf_get_lines(0, position.line, position.line + 1, false)[1]
  vim.api.nvim_win_set_cursor(0, { position.line + 1, vim.str_byteindex(text, position.character, true) })
end

local function hover()
  local responses = vim.lsp.buf_request_sync(0, 'textDocument/hover', vim.lsp.util.make_position_params(), patience)
  local response = responses and responses[client_id] or {}
  assert(not response.err, vim.inspect(response.err))
  if not response.result or response.result == vim.NIL then
    return vim.NIL
  end
  return table.concat(vim.lsp.util.convert_input_to_markdown_lines(response.result.contents), '\n')
end

-- Runs Neovim's own `code_action`, with this script in the place of the person who picks from the list.
local function choose_first_action()
  local titles
  vim.ui.select = function(items, options, on_choice)
    titles = vim.tbl_map(options.format_item, items)
    on_choice(items[1])
  end
  vim.lsp.buf.code_action()
  wait_for('A code action', function()
    return titles ~= nil
  end)
  return titles
end

local function session()
  vim.cmd('edit ' .. vim.fn.fnameescape(request.file))
  vim.bo.filetype = 'markdown'
  start_client()

  wait_for('A diagnostic of severity error', first_error)
  local report = { diagnostics = diagnostics() }
  local target = first_error()
  put_cursor(target.start)
  report.hover = hover()
  report.actions = choose_first_action()
  wait_for('The end of the diagnostic', function()
    return not still_there(target)
  end)
  report.diagnosticsAfter = diagnostics()
  vim.cmd('silent write')

  vim.lsp.get_client_by_id(client_id).stop()
  wait_for('The end of the server', function()
    return exit ~= nil
  end)
  report.exit = exit
  return report
end

local ok, result = xpcall(session, debug.traceback)
io.stdout:write(vim.fn.json_encode(ok and result or { error = result }), '\n')
io.stdout:flush()
vim.cmd('qall!')
